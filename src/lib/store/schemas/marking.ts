import * as v from 'valibot'
import type { Outcome, Report, Span } from '../../marking/types'
import { count } from './basic'
import { exactly } from './exactly'

export const outcome = exactly<Outcome>()(v.picklist(['full', 'partial', 'missed', 'contradicted']))

const span = exactly<Span>()(v.object({ start: count, end: count }))

const ideaMark = v.object({
  idea: v.string(),
  kind: v.picklist(['idea', 'step', 'equation', 'value']),
  found: v.boolean(),
  spans: v.array(span),
})

const clash = v.object({
  statement: span,
  words: span,
  against: v.string(),
  kind: v.picklist(['rejected', 'negated', 'opposite', 'swapped', 'value', 'equation', 'order']),
})

const pointMark = v.object({
  ref: v.string(),
  outcome,
  ideas: v.array(ideaMark),
  drafted: v.boolean(),
  nearest: v.optional(span),
  offered: v.boolean(),
  clash: v.optional(clash),
  sureness: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  why: v.string(),
})

export const report = exactly<Report>()(
  v.object({
    marker: v.string(),
    topic: v.string(),
    points: v.array(pointMark),
    statements: v.array(span),
    beyond: v.array(span),
  }),
)
