/** Raw values <-> records: nothing is used, and nothing is written, that does not fit its schema. */
import * as v from 'valibot'
import type { Check, PaperEntry, PaperQuestion, Round, Settings } from '../recall'
import type { Pupil, PupilChecks, PupilFile, Remarks, Review, Sender, TutorNotes } from '../review'
import { StoreError } from './errors'
import type { Kind } from './keys'
import { migrate, STEPS } from './migrate'
import {
  checkSchema,
  draftSchema,
  editSchema,
  entrySchema,
  importSchema,
  keptSyllabusSchema,
  learnedSchema,
  pageSchema,
  paperSchema,
  roundSchema,
  settingsSchema,
} from './schemas/records'
import {
  pupilChecksSchema,
  pupilFileSchema,
  pupilSchema,
  remarksSchema,
  reviewSchema,
  senderSchema,
  tutorNotesSchema,
} from './schemas/review'
import type {
  Draft,
  KeptSyllabus,
  LearnedWording,
  Page,
  SyllabusEdit,
  SyllabusImport,
} from './types'

export interface RecordOf {
  check: Check
  page: Page
  draft: Draft
  syllabus: KeptSyllabus
  paper: PaperQuestion
  settings: Settings
  edit: SyllabusEdit
  entry: PaperEntry
  round: Round
  learned: LearnedWording
  sender: Sender
  remarks: Remarks
  pupil: Pupil
  'pupil-checks': PupilChecks
  'pupil-file': PupilFile
  review: Review
  'tutor-notes': TutorNotes
  import: SyllabusImport
}

const SCHEMAS: { readonly [K in Kind]: v.GenericSchema<unknown, RecordOf[K]> } = {
  check: checkSchema,
  page: pageSchema,
  draft: draftSchema,
  syllabus: keptSyllabusSchema,
  paper: paperSchema,
  settings: settingsSchema,
  edit: editSchema,
  entry: entrySchema,
  round: roundSchema,
  learned: learnedSchema,
  sender: senderSchema,
  remarks: remarksSchema,
  pupil: pupilSchema,
  'pupil-checks': pupilChecksSchema,
  'pupil-file': pupilFileSchema,
  review: reviewSchema,
  'tutor-notes': tutorNotesSchema,
  import: importSchema,
}

export type Read<T> =
  | { readonly ok: true; readonly record: T }
  | { readonly ok: false; readonly why: string; readonly newer: boolean }

/** A raw value as a record of today's version, or why it is none. Never throws. */
export function readRecord<K extends Kind>(kind: K, raw: unknown): Read<RecordOf[K]> {
  const migrated = migrate(unpacked(raw), STEPS[kind])
  if (!migrated.ok) return migrated
  const parsed = v.safeParse<v.GenericSchema<unknown, RecordOf[K]>>(SCHEMAS[kind], migrated.record)
  return parsed.success
    ? { ok: true, record: parsed.output }
    : { ok: false, newer: false, why: firstIssue(parsed.issues) }
}

/**
 * A record with thousands of parts as it is best kept: as one text, which a browser keeps and hands over many times faster. It is
 * read like any other.
 */
export const packed = (record: RecordOf[Kind]): unknown => ({
  schema: record.schema,
  packed: JSON.stringify(record),
})

function unpacked(raw: unknown): unknown {
  if (typeof raw !== 'object' || raw === null || !('packed' in raw)) return raw
  try {
    return JSON.parse(String(raw.packed)) as unknown
  } catch {
    return raw
  }
}

/**
 * The record as plain data that fits its schema: what is written can be read again, and a component's deep state
 * proxy, which IndexedDB cannot clone, is left behind. Throws a StoreError for one that does not fit.
 */
export function forWriting<K extends Kind>(kind: K, record: RecordOf[K]): RecordOf[K] {
  const read = readRecord(kind, record)
  if (read.ok) return read.record
  throw new StoreError(
    'unknown',
    `This was not kept, because it could not have been read again. ${read.why} Everything kept before is still ` +
      'there. Copy what is on this page, then load the page again.',
  )
}

/** The first thing that does not fit and where; cut, because it may quote a whole dump. */
function firstIssue([issue]: readonly [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]]): string {
  const where = v.getDotPath(issue)
  const text = where ? `At ${where}: ${issue.message}` : issue.message
  return text.length > 200 ? `${text.slice(0, 200)}…` : text
}
