/** The nouns of the tutor's side. Plain, readonly data: it goes into files and into the store. */
import type { Outcome, Report } from '../marking/types'
import type { Check } from '../recall'
import type { Topic } from '../syllabus/types'

/** Who saves a file for somebody else: made once on a device, so that a newer file is known to be of the same person. */
export interface Sender {
  readonly schema: 1
  /** Random and stable; it says nothing of the person. */
  readonly id: string
  /** As they wish to be called by the one who opens the file. */
  readonly name: string
}

/** What was written, and what the marker made of it. */
export interface SharedPage {
  readonly text: string
  readonly report: Report
}

export interface SharedCheck {
  readonly check: Check
  /** Which of the file's topics it is of, as that topic stood then: an index. */
  readonly topic: number
  /** Absent where the pupil shares the marks without the text. */
  readonly page?: SharedPage
}

/** The file that a pupil saves for the tutor. */
export interface RecallFile {
  readonly app: 'Second Ink'
  readonly recallFile: 1
  readonly pupil: Pick<Sender, 'id' | 'name'>
  readonly madeAtMs: number
  readonly topics: readonly Topic[]
  readonly checks: readonly SharedCheck[]
}

/** One session of a topic, as the group page needs it. */
export interface SessionSummary {
  readonly day: string
  readonly full: number
  readonly points: number
}

export interface GapSummary {
  readonly ref: string
  /** Word for word as the syllabus had it. */
  readonly text: string
  readonly outcome: Exclude<Outcome, 'full'>
}

export interface TopicSummary {
  readonly syllabusId: string
  readonly topicId: string
  readonly title: string
  /** The latest two sessions, oldest first. */
  readonly sessions: readonly SessionSummary[]
  /** Full sessions in a row, the latest included. */
  readonly run: number
  /** The points of the latest session that were not full, in the syllabus's order. */
  readonly gaps: readonly GapSummary[]
}

/** A pupil as the group page shows them; worked out from the checks whenever these or the tutor's marks change. */
export interface Pupil {
  readonly schema: 1
  readonly id: string
  readonly name: string
  /** When their file was made, and when it was opened here. */
  readonly madeAtMs: number
  readonly openedAtMs: number
  readonly checks: number
  readonly topics: readonly TopicSummary[]
}

export interface PupilCheck {
  readonly check: Check
  readonly topic: number
  /** Whether the text came with it. */
  readonly withText: boolean
}

/** All checks of a pupil's file: read for the pupil's own page only. */
export interface PupilChecks {
  readonly schema: 1
  readonly id: string
  readonly madeAtMs: number
  readonly topics: readonly Topic[]
  readonly checks: readonly PupilCheck[]
}

/** A pupil's file as it was opened, where it came with texts: read only when a page of it is looked at. */
export interface PupilFile {
  readonly schema: 1
  readonly id: string
  readonly madeAtMs: number
  /** The file, word for word. */
  readonly text: string
}

/** The tutor's mark of one point; without an outcome it is a comment alone. */
export interface ReviewedPoint {
  readonly ref: string
  readonly outcome: Outcome | null
  /** Empty where there is none. */
  readonly comment: string
  readonly atMs: number
}

/** The tutor's marks of one check. They stay when the pupil's file is replaced. */
export interface Review {
  readonly schema: 1
  readonly pupilId: string
  readonly checkId: string
  /** Every mark was given before the other marks were shown. */
  readonly blind: boolean
  readonly comment: string
  readonly points: readonly ReviewedPoint[]
  readonly savedAtMs: number
}

/** What the tutor has seen of a pupil: for each check how many changes of marks it had. */
export interface Seen {
  readonly atMs: number
  readonly checks: Readonly<Record<string, number>>
}

/** The tutor's own words on a pupil: they never go into a file for the pupil. */
export interface TutorNotes {
  readonly schema: 1
  readonly pupilId: string
  readonly text: string
  readonly seen?: Seen
  readonly savedAtMs: number
}

export interface ReturnedCheck {
  readonly checkId: string
  readonly comment: string
  readonly points: readonly ReviewedPoint[]
}

/** The file that the tutor saves for one pupil. */
export interface ReturnFile {
  readonly app: 'Second Ink'
  readonly returnFile: 1
  readonly pupilId: string
  readonly tutor: Pick<Sender, 'id' | 'name'>
  readonly madeAtMs: number
  readonly checks: readonly ReturnedCheck[]
}

/** What came back from a tutor on one check, kept beside it on the pupil's device. Its marks are in the check's changes. */
export interface Remarks {
  readonly schema: 1
  /** The id of the check. */
  readonly id: string
  readonly tutor: string
  readonly madeAtMs: number
  readonly comment: string
  readonly points: readonly { readonly ref: string; readonly comment: string }[]
  /** What the pupil took off: the same in the tutor's next file stays off. */
  readonly takenOff?: {
    readonly comment: string
    readonly points: readonly Omit<ReviewedPoint, 'atMs'>[]
  }
}
