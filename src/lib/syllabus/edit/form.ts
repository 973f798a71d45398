/**
 * A syllabus while it is edited: every field is the text that stands in it, which may not be readable yet. Keys tell
 * topics and points apart whatever happens to their titles, numbers and places; those of a file that was read say
 * where they stood in it (`t0`, `p0.3`), so that its comments can go with them.
 */
import { writeWordings } from '../notation'
import type { Point, Syllabus, Topic } from '../types'

export interface SyllabusForm {
  /** Stays whatever the title becomes: checks are kept under it. '' in a new one: made from the title. */
  readonly id: string
  readonly title: string
  readonly note: string
  readonly topics: readonly TopicForm[]
}

export interface TopicForm {
  readonly key: string
  /** As that of the syllabus. */
  readonly id: string
  readonly title: string
  readonly caution: string
  readonly points: readonly PointForm[]
}

/** '' and empty lists: the field is not there. */
export interface PointForm {
  readonly key: string
  readonly ref: string
  readonly text: string
  readonly cue: string
  readonly ideas: readonly string[]
  readonly any: string
  readonly value: string
  readonly equation: string
  readonly where: readonly SymbolForm[]
  readonly steps: readonly string[]
  readonly reject: readonly string[]
}

export interface SymbolForm {
  readonly symbol: string
  readonly words: string
}

export const formOf = ({ id, title, note = '', topics }: Syllabus): SyllabusForm => ({
  id,
  title,
  note,
  topics: topics.map(topicForm),
})

const topicForm = ({ id, title, caution = '', points }: Topic, t: number): TopicForm => ({
  key: `t${t}`,
  id,
  title,
  caution,
  points: points.map((point, p) => pointForm(point, `p${t}.${p}`)),
})

function pointForm(point: Point, key: string): PointForm {
  const { ref, text, ideas, any, value, equation, steps = [], reject = [] } = point
  return {
    ...emptyPoint(key, ref),
    text,
    cue: point.cue ?? '',
    ideas: ideas.map(({ written }) => written),
    any: any === undefined ? '' : String(any),
    value: value?.written ?? '',
    equation: equation?.written ?? '',
    where: Object.entries(equation?.where ?? {}).map(([symbol, wordings]) => ({
      symbol,
      words: writeWordings(wordings),
    })),
    steps: steps.map(({ written }) => written),
    reject,
  }
}

export const emptyPoint = (key: string, ref: string): PointForm => ({
  key,
  ref,
  text: '',
  cue: '',
  ideas: [],
  any: '',
  value: '',
  equation: '',
  where: [],
  steps: [],
  reject: [],
})

/** A syllabus of one topic and one point, to begin with. */
export const emptyForm = (title = ''): SyllabusForm => ({
  id: '',
  title,
  note: '',
  topics: [{ key: 'n1', id: '', title: '', caution: '', points: [emptyPoint('n2', '1.1')] }],
})
