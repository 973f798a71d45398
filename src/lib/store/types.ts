/** The records that are kept, beside `Check`: one IndexedDB entry each, so that a broken one costs only itself. */
import type { Report } from '../marking/types'
import type { SyllabusForm } from '../syllabus'
import type { DraftTree } from '../syllabus/import'
import type { Syllabus, Topic } from '../syllabus/types'

/** The student's page of one check as it was marked: text, the topic as it stood then, and the marker's report. */
export interface Page {
  readonly schema: 1
  /** The id of its check. */
  readonly id: string
  readonly text: string
  /** The topic with its points exactly as they were marked. */
  readonly topic: Topic
  readonly report: Report
}

/** A dump not yet marked, saved while typing. One for each topic. */
export interface Draft {
  readonly schema: 1
  readonly syllabusId: string
  readonly topicId: string
  readonly text: string
  readonly startedAtMs: number
  readonly savedAtMs: number
  readonly writingMs: number
  readonly pastes: readonly { readonly atMs: number; readonly length: number }[]
  /** Times that the page went out of sight while it was written, and for how long together. Absent: not recorded. */
  readonly aways?: number
  readonly awayMs?: number
}

/** A syllabus the user brought: the file word for word and what was read from it. */
export interface KeptSyllabus {
  readonly schema: 1
  readonly id: string
  readonly source: string
  readonly syllabus: Syllabus
  readonly addedAtMs: number
}

/** A syllabus that is being edited, saved while typing. Nothing of it is in use until it takes the syllabus's place. */
export interface SyllabusEdit {
  readonly schema: 1
  /** Of the syllabus that is edited. */
  readonly id: string
  /** The file that the edit was begun from. */
  readonly source: string
  readonly form: SyllabusForm
  readonly savedAtMs: number
}

/** What was brought and is being put right: nothing of it is a syllabus until it is kept. */
export interface SyllabusImport {
  readonly schema: 1
  readonly id: 'draft'
  /** The name of what was brought. */
  readonly name: string
  readonly tree: DraftTree
  readonly savedAtMs: number
}

/** A statement that somebody gave one point for, or found not enough, when a mark was changed. One for a point, a check and who changed it. */
export interface LearnedWording {
  readonly schema: 1
  readonly syllabusId: string
  readonly topicId: string
  readonly ref: string
  /** The check whose mark was changed. */
  readonly checkId: string
  readonly text: string
  readonly credited: boolean
  readonly by: 'student' | 'tutor'
  /** On the tutor's side: whose check it is. Absent: the check is the user's own. */
  readonly pupilId?: string
  readonly atMs: number
  /** The point as it stood: what was learnt of another text says nothing of this one. */
  readonly pointText: string
}
