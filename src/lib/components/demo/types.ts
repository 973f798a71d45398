/** What the demo is made of: pages that an invented pupil typed, before they are marked. */
import type { Outcome } from '$lib/marking/types'
import type { Rating, WentWrong } from '$lib/recall'

/** One page. Its marks are not written down: the marker gives them when the demo is loaded. */
export interface DemoPage {
  /** Calendar days before the day on which the demo is loaded. */
  readonly daysAgo: number
  /** Time on the wall, 'HH:MM'. */
  readonly at: string
  /** Time written, in minutes. */
  readonly minutes: number
  /** Keys of `lines`, one after the other: a page grows as more of them are remembered. */
  readonly says: string
  /** A gap check of these points only. */
  readonly gapsOf?: readonly string[]
  /** Marks that the pupil changed. */
  readonly changed?: Readonly<Record<string, Outcome>>
  /** Characters that came in by pasting. */
  readonly pasted?: number
}

export interface DemoTopic {
  readonly topicId: string
  /**
   * What the pupil types, by the point that it is about: `a` and `b` say it whole, `w` says half of it or is vague, `x` gets
   * it wrong, `z` is on no point.
   */
  readonly lines: Readonly<Record<string, string>>
  readonly pages: readonly DemoPage[]
}

export interface DemoExam {
  readonly inDays: number
  readonly title: string
  readonly topicIds: readonly string[]
}

export interface DemoPaper {
  readonly daysAgo: number
  readonly topicId: string
  readonly source: string
  readonly question: string
  readonly wentWrong?: readonly WentWrong[]
  readonly marksWon: number
  readonly marksOutOf: number
  readonly points: readonly { readonly ref: string; readonly lost: boolean }[]
}

export interface DemoHistory {
  /** The shipped syllabus that the pupil works from. */
  readonly syllabusId: string
  readonly topics: readonly DemoTopic[]
  readonly exams: readonly DemoExam[]
  readonly ratings: readonly { readonly topicId: string; readonly rating: Rating }[]
  readonly papers: readonly DemoPaper[]
}
