/** A batch of pages as rows of a table file, and as a summary to read. */
import type { Report } from '../marking/types'
import type { Batch, MarkedText } from '../review'
import type { Topic } from '../syllabus/types'
import { outcomeWords, recallWords } from './sentences'
import { counted, listed } from './words'

const HEAD = ['Page', 'Point', 'The syllabus says', 'Mark', 'In doubt', 'Why']

/** A row for each point of each page. */
export const batchTable = (
  { points }: Topic,
  texts: readonly MarkedText[],
): readonly (readonly string[])[] => {
  const textOf = new Map(points.map(({ ref, text }) => [ref, text]))
  return [HEAD, ...texts.flatMap(({ name, report }) => rowsOf(name, report, textOf))]
}

const rowsOf = (name: string, { points }: Report, textOf: ReadonlyMap<string, string>) =>
  points.map(({ ref, outcome, offered, why }) => [
    name,
    ref,
    textOf.get(ref) ?? '',
    outcomeWords(outcome),
    offered ? 'yes' : '',
    why,
  ])

/** Markdown that reads well as plain text. */
export function batchSummary(topic: Topic, { pages, points }: Batch): string {
  const missed = points.filter(({ missing }) => missing.length > 0)
  const lines = [
    `# ${topic.title}: ${counted(pages.length, 'page')}`,
    '',
    'Marked by the marker alone. A point in doubt counts as missed until a person has looked at it.',
    '',
    '## Pages, lowest first',
    '',
    ...pages.map((page) => `- ${page.name}: ${pageWords(page)}`),
    '',
    '## Points, most missed first',
    '',
    ...missed.map(
      ({ ref, text, missing }) =>
        `- ${ref}, missed on ${missing.length} of ${counted(pages.length, 'page')}: ${text}${missing.length <= 5 ? ` (${listed(missing)})` : ''}`,
    ),
    ...(missed.length === 0 ? ['Every page has every point.'] : []),
  ]
  return `${lines.join('\n')}\n`
}

/** "17 of 24 points full; 2 part said; 1 says the opposite; 3 in doubt". */
export function pageWords(page: Batch['pages'][number]): string {
  const { partial, contradicted, asks } = page
  return [
    `${recallWords(page)} full`,
    partial > 0 && `${partial} part said`,
    contradicted > 0 && `${contradicted} ${contradicted === 1 ? 'says' : 'say'} the opposite`,
    asks > 0 && `${asks} in doubt`,
  ]
    .filter((part) => part !== false)
    .join('; ')
}
