/** Marks won and lost on exam questions, as the student logs them. They never change a topic's status. */
import type { Day } from './days'
import type { EditedPoint } from './types'

/** How a mark was lost. One question may lose marks in several ways. */
export const WAYS_WRONG = ['not-known', 'left-out', 'misread', 'working'] as const
export type WentWrong = (typeof WAYS_WRONG)[number]

export interface PaperQuestion {
  readonly schema: 1
  readonly id: string
  readonly syllabusId: string
  readonly topicId: string
  /** The day on which it was answered. */
  readonly day: Day
  /** Which paper, in the student's words; with the question where `question` is absent. */
  readonly source: string
  /** Which question of it: "3 (b)". */
  readonly question?: string
  readonly marksWon: number
  readonly marksOutOf: number
  /** The points that it touched; `lost` where a mark was lost on the point. */
  readonly points: readonly { readonly ref: string; readonly lost: boolean }[]
  /** As that of a check. */
  readonly edited?: readonly EditedPoint[]
  readonly wentWrong?: readonly WentWrong[]
  /** In the student's own words. */
  readonly note?: string
}
