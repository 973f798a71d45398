/** Marks won and lost on exam questions, as the student logs them. They never change a topic's status. */
import type { Day } from './days'
import type { EditedPoint } from './types'

export interface PaperQuestion {
  readonly schema: 1
  readonly id: string
  readonly syllabusId: string
  readonly topicId: string
  /** The day on which it was answered. */
  readonly day: Day
  /** Which paper and question, in the student's words. */
  readonly source: string
  readonly marksWon: number
  readonly marksOutOf: number
  /** The points that it touched; `lost` where a mark was lost on the point. */
  readonly points: readonly { readonly ref: string; readonly lost: boolean }[]
  /** As that of a check. */
  readonly edited?: readonly EditedPoint[]
}
