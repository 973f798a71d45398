/** A syllabus -> the rows of a table, a point a row; several ideas of a point stand in one cell, each on a line of its own. */
import { writeWordings } from '../notation'
import type { Point, Syllabus, Topic } from '../types'

/** The first four are what an import asks for; the others are empty where a point has none. */
export const TABLE_COLUMNS = [
  'topic',
  'ref',
  'text',
  'ideas',
  'any',
  'cue',
  'reject',
  'equation',
  'where',
  'value',
  'steps',
  'caution',
] as const

type Column = (typeof TABLE_COLUMNS)[number]

/** The names of the columns, then a row for each point in the syllabus's order. A caution stands at its topic's first point. */
export const tableRows = ({ topics }: Syllabus): string[][] => [
  [...TABLE_COLUMNS],
  ...topics.flatMap((topic) =>
    topic.points.map((point, i) => {
      const cells = cellsOf(topic, point, i === 0)
      return TABLE_COLUMNS.map((column) => cells[column] ?? '')
    }),
  ),
]

function cellsOf(
  { title, caution }: Topic,
  point: Point,
  first: boolean,
): Partial<Record<Column, string | undefined>> {
  const { ref, text, cue, ideas, any, reject, equation, value, steps } = point
  return {
    topic: title,
    ref,
    text,
    ideas: lines(ideas.map(({ written }) => written)),
    any: any?.toString(),
    cue,
    reject: lines(reject ?? []),
    equation: equation?.written,
    where: lines(
      Object.entries(equation?.where ?? {}).map(
        ([symbol, words]) => `${symbol}: ${writeWordings(words)}`,
      ),
    ),
    value: value?.written,
    steps: lines((steps ?? []).map(({ written }) => written)),
    caution: first ? caution : undefined,
  }
}

/** A line break within one of them would make two of it. */
const lines = (texts: readonly string[]): string =>
  texts.map((text) => text.replace(/\s*[\r\n]+\s*/g, ' ')).join('\n')
