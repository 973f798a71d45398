import * as v from 'valibot'
import type { SyllabusForm } from '../../syllabus'
import type { DraftTree } from '../../syllabus/import'
import type { Syllabus, Topic } from '../../syllabus/types'
import { id } from './basic'
import { exactly } from './exactly'

const wordSlot = v.object({
  text: v.string(),
  optional: v.boolean(),
  suffix: v.optional(v.string()),
})
const wording = v.object({ words: v.array(wordSlot), exact: v.boolean() })
const part = v.object({ wordings: v.array(wording) })
const idea = v.object({ written: v.string(), parts: v.array(part) })

const equation = v.object({
  written: v.string(),
  kind: v.picklist(['algebraic', 'chemical']),
  where: v.record(v.string(), v.array(wording)),
})

const value = v.object({
  written: v.string(),
  number: v.pipe(v.number(), v.finite()),
  unit: v.optional(v.string()),
  tolerance: v.pipe(v.number(), v.finite(), v.minValue(0)),
})

const pointMore = {
  cue: v.optional(v.string()),
  ideas: v.array(idea),
  any: v.optional(v.number()),
  reject: v.optional(v.array(v.string())),
  equation: v.optional(equation),
  value: v.optional(value),
  steps: v.optional(v.array(idea)),
}
const point = v.object({ ref: v.string(), text: v.string(), ...pointMore })

export const topic = exactly<Topic>()(
  v.object({
    id,
    title: v.string(),
    caution: v.optional(v.string()),
    points: v.array(point),
  }),
)

export const syllabus = exactly<Syllabus>()(
  v.object({
    format: v.literal(1),
    id,
    title: v.string(),
    note: v.optional(v.string()),
    topics: v.array(topic),
  }),
)

const texts = v.array(v.string())

const pointForm = v.object({
  key: id,
  ref: v.string(),
  text: v.string(),
  cue: v.string(),
  ideas: texts,
  any: v.string(),
  value: v.string(),
  equation: v.string(),
  where: v.array(v.object({ symbol: v.string(), words: v.string() })),
  steps: texts,
  reject: texts,
})

export const syllabusForm = exactly<SyllabusForm>()(
  v.object({
    id: v.string(),
    title: v.string(),
    note: v.string(),
    topics: v.array(
      v.object({
        key: id,
        id: v.string(),
        title: v.string(),
        caution: v.string(),
        points: v.array(pointForm),
      }),
    ),
  }),
)

const place = v.object({
  kind: v.picklist(['page', 'line', 'row', 'paragraph', 'item']),
  number: v.number(),
})

export const draftTree = exactly<DraftTree>()(
  v.object({
    title: v.string(),
    note: v.optional(v.string()),
    lines: v.array(
      v.object({
        key: v.number(),
        role: v.picklist(['topic', 'point', 'out']),
        ref: v.string(),
        text: v.string(),
        depth: v.optional(v.number()),
        counted: v.optional(v.boolean()),
        place: v.optional(place),
        why: v.optional(v.string()),
        more: v.optional(v.object(pointMore)),
        caution: v.optional(v.string()),
      }),
    ),
    warnings: v.array(v.object({ message: v.string(), place: v.optional(place) })),
  }),
)
