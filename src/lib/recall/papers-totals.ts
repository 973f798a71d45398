/** Logged exam questions -> totals. Pure counts; the order of the questions never matters. */
import type { Day } from './days'
import { refToday } from './edited'
import { WAYS_WRONG, type PaperQuestion, type WentWrong } from './papers'
import type { TopicPlace } from './settings'

/** Marks of some questions. `lost` is what is left of `outOf`, never below 0. */
export interface Marks {
  readonly won: number
  readonly outOf: number
  readonly lost: number
  readonly questions: number
}

export interface TopicMarks extends TopicPlace, Marks {}

export interface PointLost extends TopicPlace {
  readonly ref: string
  /** Questions that lost a mark on it. */
  readonly times: number
  readonly lastDay: Day
}

/** Questions that lost a mark, by what went wrong; one that names two ways counts in both. `unsaid`: names none. */
export interface Losses {
  readonly ways: readonly { readonly way: WentWrong; readonly questions: number }[]
  readonly unsaid: number
  /** All questions that lost a mark. */
  readonly questions: number
}

export const marksOf = (papers: readonly PaperQuestion[]): Marks => {
  const won = sum(papers.map(({ marksWon }) => marksWon))
  const outOf = sum(papers.map(({ marksOutOf }) => marksOutOf))
  return { won, outOf, lost: sum(papers.map(lostOn)), questions: papers.length }
}

/** Most marks lost first; then the smaller share won; then in the order of their ids, so that no topic jumps about. */
export const topicMarks = (papers: readonly PaperQuestion[]): TopicMarks[] =>
  byTopic(papers)
    .map(({ place, papers: own }) => ({ ...place, ...marksOf(own) }))
    .sort((a, b) => b.lost - a.lost || share(a) - share(b) || comparePlaces(a, b))

/**
 * For each topic its marks in each stretch of time, topics in the order of `topicMarks`. `stretchOf` names the stretch
 * of a day: a month, or the day itself.
 */
export function marksOverTime(
  papers: readonly PaperQuestion[],
  stretchOf: (day: Day) => string,
): { stretches: string[]; topics: (TopicPlace & { readonly marks: (Marks | undefined)[] })[] } {
  const stretches = [...new Set(papers.map(({ day }) => stretchOf(day)))].sort()
  const own = new Map(byTopic(papers).map((topic) => [topic.key, topic.papers]))
  const topics = topicMarks(papers).map(({ syllabusId, topicId }) => {
    const place = { syllabusId, topicId }
    const here = own.get(keyOf(place)) ?? []
    const marks = stretches.map((stretch) => {
      const then = here.filter(({ day }) => stretchOf(day) === stretch)
      return then.length === 0 ? undefined : marksOf(then)
    })
    return { ...place, marks }
  })
  return { stretches, topics }
}

export function lossesOf(papers: readonly PaperQuestion[]): Losses {
  const losing = papers.filter((paper) => lostOn(paper) > 0)
  return {
    ways: WAYS_WRONG.map((way) => ({
      way,
      questions: losing.filter(({ wentWrong }) => wentWrong?.includes(way)).length,
    })),
    unsaid: losing.filter(({ wentWrong = [] }) => wentWrong.length === 0).length,
    questions: losing.length,
  }
}

/** The points of a question by the refs that they have today; one whose meaning was changed since is left out. */
export const pointsOfToday = ({ points, edited }: PaperQuestion): PaperQuestion['points'] =>
  points.flatMap(({ ref, lost }) => {
    const now = refToday(edited, ref)
    return now === null ? [] : [{ ref: now, lost }]
  })

/** Points that lost a mark: the most often first, then the latest. */
export function pointsLost(papers: readonly PaperQuestion[]): PointLost[] {
  const found = new Map<string, PointLost>()
  for (const paper of papers) {
    const { syllabusId, topicId, day } = paper
    for (const { ref, lost } of pointsOfToday(paper)) {
      if (!lost) continue
      const key = JSON.stringify([syllabusId, topicId, ref])
      const before = found.get(key)
      const lastDay = before && before.lastDay > day ? before.lastDay : day
      found.set(key, { syllabusId, topicId, ref, times: (before?.times ?? 0) + 1, lastDay })
    }
  }
  return [...found.values()].sort(
    (a, b) =>
      b.times - a.times ||
      compare(b.lastDay, a.lastDay) ||
      comparePlaces(a, b) ||
      inOrder.compare(a.ref, b.ref),
  )
}

/** For sorting: latest day first, then the paper, then its questions in the order of their numbers: 2 before 10. */
export const byPaper = (a: PaperQuestion, b: PaperQuestion): number =>
  compare(b.day, a.day) ||
  inOrder.compare(a.source, b.source) ||
  inOrder.compare(a.question ?? '', b.question ?? '') ||
  compare(a.id, b.id)

const inOrder = new Intl.Collator('en-GB', { numeric: true })

const lostOn = ({ marksWon, marksOutOf }: PaperQuestion): number =>
  Math.max(0, marksOutOf - marksWon)

/** To a thousandth of a mark: 0.1 + 0.2 is 0.3 here. */
const sum = (marks: readonly number[]): number =>
  Math.round(marks.reduce((all, mark) => all + mark, 0) * 1000) / 1000

const share = ({ won, outOf }: Marks): number => (outOf === 0 ? 1 : won / outOf)

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
const comparePlaces = (a: TopicPlace, b: TopicPlace): number =>
  compare(a.syllabusId, b.syllabusId) || compare(a.topicId, b.topicId)

const keyOf = ({ syllabusId, topicId }: TopicPlace) => JSON.stringify([syllabusId, topicId])

function byTopic(papers: readonly PaperQuestion[]) {
  const topics = new Map<string, { key: string; place: TopicPlace; papers: PaperQuestion[] }>()
  for (const paper of papers) {
    const { syllabusId, topicId } = paper
    const key = keyOf(paper)
    const topic = topics.get(key) ?? { key, place: { syllabusId, topicId }, papers: [] }
    topic.papers.push(paper)
    topics.set(key, topic)
  }
  return [...topics.values()]
}
