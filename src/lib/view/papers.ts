/** The log of exam questions in words, rows and bars. */
import {
  marksOverTime,
  type Day,
  type Marks,
  type PaperQuestion,
  type TopicPlace,
  type WentWrong,
} from '../recall'
import { shortDay, tinyDay } from './dates'
import { counted } from './words'

export const WAY_WORDS: Readonly<Record<WentWrong, string>> = {
  'not-known': 'Not known',
  'left-out': 'Known, but left out',
  misread: 'Question misread',
  working: 'Working or arithmetic',
}

/** "7.5 of 10 marks". */
export const marksWords = ({ won, outOf }: Pick<Marks, 'won' | 'outOf'>): string =>
  `${won.toLocaleString('en-GB')} of ${counted(outOf, 'mark')}`

/** Whole per cent; `undefined` where there was nothing to win. */
export const perCent = ({ won, outOf }: Pick<Marks, 'won' | 'outOf'>): number | undefined =>
  outOf === 0 ? undefined : Math.round((won / outOf) * 100)

/** "Harbour mock, question 3 (b)". */
export const questionWords = ({
  source,
  question,
}: Pick<PaperQuestion, 'source' | 'question'>): string =>
  question === undefined ? source : `${source}, question ${question}`

/** The questions of one paper on one day. */
export interface PaperGroup {
  readonly key: string
  readonly day: Day
  readonly source: string
  readonly questions: readonly PaperQuestion[]
}

/** Neighbours with the same day and source; `sorted` by `byPaper`. */
export function paperGroups(sorted: readonly PaperQuestion[]): PaperGroup[] {
  const groups: { key: string; day: Day; source: string; questions: PaperQuestion[] }[] = []
  for (const question of sorted) {
    const { day, source } = question
    const last = groups.at(-1)
    if (last?.day === day && last.source === source) last.questions.push(question)
    else groups.push({ key: JSON.stringify([day, source]), day, source, questions: [question] })
  }
  return groups
}

/** More days than these are told by the month: a table has to be read at one look. */
const MOST_DAYS = 6

export interface OverTime {
  readonly stretches: readonly string[]
  readonly topics: readonly (TopicPlace & { readonly marks: readonly (Marks | undefined)[] })[]
}

/** Topics × days, or × months where there are many days; oldest first. */
export function overTime(papers: readonly PaperQuestion[], today: Day): OverTime {
  const days = new Set(papers.map(({ day }) => day))
  const byDay = days.size <= MOST_DAYS
  const { stretches, topics } = marksOverTime(papers, (day) => (byDay ? day : day.slice(0, 7)))
  return {
    stretches: stretches.map((stretch) =>
      byDay ? tinyDay(stretch, today) : tinyDay(`${stretch}-01`, today).replace(/^1 /, ''),
    ),
    topics,
  }
}

/** Names as they are today; a topic that is no longer here has only its id. */
export type NamesOf = (place: TopicPlace) => { readonly syllabus: string; readonly topic: string }

export const CSV_HEAD: readonly string[] = [
  'Date',
  'Paper',
  'Question',
  'Syllabus',
  'Topic',
  'Marks won',
  'Marks out of',
  'Points touched',
  'Points that lost a mark',
  'What went wrong',
  'In my own words',
]

/** A head and one row for each question, in the order given. Days as ISO 8601 has them, marks with a point. */
export const csvRows = (papers: readonly PaperQuestion[], namesOf: NamesOf): string[][] => [
  [...CSV_HEAD],
  ...papers.map((paper) => {
    const names = namesOf(paper)
    const refs = (lostOnly: boolean) =>
      paper.points.flatMap(({ ref, lost }) => (lost || !lostOnly ? [ref] : [])).join('; ')
    return [
      paper.day,
      paper.source,
      paper.question ?? '',
      names.syllabus,
      names.topic,
      String(paper.marksWon),
      String(paper.marksOutOf),
      refs(false),
      refs(true),
      (paper.wentWrong ?? []).map((way) => WAY_WORDS[way]).join('; '),
      paper.note ?? '',
    ]
  }),
]

/** "2.3 and 2.7 lost a mark; 2.1 did not." Empty where no point was named. */
export function pointsWords(points: PaperQuestion['points']): string {
  const refs = (lost: boolean) =>
    points.flatMap((point) => (point.lost === lost ? [point.ref] : [])).join(', ')
  return [refs(true) && `lost on ${refs(true)}`, refs(false) && `held ${refs(false)}`]
    .filter((part) => part !== '')
    .join('; ')
}

/** "3 questions of Harbour mock, 5 March": what a change was about. */
export function changeWords(papers: readonly PaperQuestion[], today: Day): string {
  const [first] = papers
  if (!first) return 'Nothing'
  const day = shortDay(first.day, today)
  return papers.length === 1
    ? `${questionWords(first)}, ${day}`
    : `${counted(papers.length, 'question')} of ${first.source}, ${day}`
}
