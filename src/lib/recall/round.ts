/**
 * A round: points that are asked one by one, cue first, until each was written in full, the student ends it, or, the
 * night before, its minutes are over. Kept as it goes, so that it survives a closed tab. Pure: the clock is a parameter.
 */
import type { Outcome, Report } from '../marking/types'
import type { Topic } from '../syllabus/types'
import { afterWriting } from './drill'

export interface Round {
  readonly schema: 1
  /** Where it is found again: what it was begun from. */
  readonly id: string
  /** Begins the ids of the gap checks that come of it. */
  readonly uid: string
  readonly kind: 'drill' | 'tonight'
  readonly syllabusId: string
  readonly title: string
  /** The topics as they stood when it began, with only the points that are asked. */
  readonly topics: readonly Topic[]
  readonly points: readonly RoundPoint[]
  /** The keys of the points left, the next first. */
  readonly pile: readonly string[]
  readonly stage: 'writing' | 'marked' | 'over'
  /** What is being written on the first of the pile; of a point with steps, a text for each so far. */
  readonly typing: readonly string[]
  readonly startedAtMs: number
  readonly savedAtMs: number
  /** Time in front and not paused, in milliseconds. */
  readonly spentMs: number
  /** Minutes given, in milliseconds; absent: no clock. */
  readonly budgetMs?: number
  /** Points that the minutes had no room for. */
  readonly leftOut?: number
}

export interface RoundPoint {
  readonly key: string
  readonly topicId: string
  readonly ref: string
  /** Why it is on the list, as a sentence. */
  readonly why?: string
  readonly tries: number
  readonly spentMs: number
  readonly last?: RoundTry
}

export interface RoundTry {
  readonly text: string
  readonly report: Report
  /** The student's own mark, where they do not agree. */
  readonly changed: Outcome | null
  readonly atMs: number
}

/** The point that is asked now; `undefined` where the round is over. */
export const pointNow = (round: Round): RoundPoint | undefined =>
  round.stage === 'over' ? undefined : round.points.find(({ key }) => key === round.pile[0])

/** The mark that stands for a point; `undefined` where it was not written on yet. */
export const standing = ({ last }: RoundPoint): Outcome | undefined =>
  last && (last.changed ?? last.report.points[0]?.outcome ?? 'missed')

/** The first of the pile was written on and marked. Its place in the pile waits for `goOn`: the mark may be changed. */
export function wrote(
  round: Round,
  { text, report, atMs, spentMs }: Omit<RoundTry, 'changed'> & { readonly spentMs: number },
): Round {
  if (round.stage !== 'writing') return round
  return {
    ...withPoint(round, (point) => ({
      ...point,
      tries: point.tries + 1,
      spentMs: point.spentMs + spentMs,
      last: { text, report, changed: null, atMs },
    })),
    stage: 'marked',
    savedAtMs: atMs,
  }
}

/** The student's mark of what was just written; `null` takes it back. */
export const remark = (round: Round, changed: Outcome | null): Round =>
  round.stage === 'marked'
    ? withPoint(round, (point) =>
        point.last ? { ...point, last: { ...point.last, changed } } : point,
      )
    : round

/** On to the next: written in full, the point leaves the pile; else it comes round again. Nothing else leaves it. */
export function goOn(round: Round): Round {
  const point = pointNow(round)
  if (round.stage !== 'marked' || !point) return round
  const pile = afterWriting(round.pile, standing(point) ?? 'missed')
  const over = pile.length === 0 || timeIsUp(round)
  return { ...round, pile, typing: [''], stage: over ? 'over' : 'writing' }
}

/** The student ends it: what is left stays in the pile and is told. */
export const endRound = (round: Round): Round => ({ ...round, stage: 'over' })

export const timeIsUp = ({ spentMs, budgetMs }: Round): boolean =>
  budgetMs !== undefined && spentMs >= budgetMs

/** The points of a round that is over, in the syllabus's order as far as it is known: got back, written but not full, not written. */
export function outcomesOf({ points }: Pick<Round, 'points'>): {
  readonly back: readonly RoundPoint[]
  readonly not: readonly RoundPoint[]
  readonly unseen: readonly RoundPoint[]
} {
  return {
    back: points.filter((point) => standing(point) === 'full'),
    not: points.filter((point) => point.last !== undefined && standing(point) !== 'full'),
    unseen: points.filter((point) => point.last === undefined),
  }
}

function withPoint(round: Round, change: (point: RoundPoint) => RoundPoint): Round {
  const [now] = round.pile
  return {
    ...round,
    points: round.points.map((point) => (point.key === now ? change(point) : point)),
  }
}
