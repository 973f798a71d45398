/** One schema for each kind of record: it is the validation, and the compiler holds it to the noun. */
import * as v from 'valibot'
import { WAYS_WRONG } from '../../recall'
import type {
  Check,
  MarkChange,
  PaperEntry,
  PaperQuestion,
  Paste,
  Round,
  Settings,
} from '../../recall'
import type {
  Draft,
  KeptSyllabus,
  LearnedWording,
  Page,
  SyllabusEdit,
  SyllabusImport,
} from '../types'
import { count, day, id, instantMs, spanMs } from './basic'
import { exactly } from './exactly'
import { outcome, report } from './marking'
import { draftTree, syllabus, syllabusForm, topic } from './syllabus'

const schema = v.literal(1)
const place = { syllabusId: id, topicId: id }

const paste = exactly<Paste>()(v.object({ atMs: instantMs, length: count }))

const markChange = exactly<MarkChange>()(
  v.object({
    ref: v.string(),
    outcome: v.nullable(outcome),
    by: v.picklist(['student', 'tutor']),
    atMs: instantMs,
  }),
)

const editedPoints = v.array(v.object({ ref: v.string(), now: v.nullable(v.string()) }))

export const checkSchema = exactly<Check>()(
  v.object({
    schema,
    id,
    kind: v.picklist(['check', 'gap']),
    ...place,
    topicTitle: v.string(),
    atMs: instantMs,
    zone: v.string(),
    marks: v.array(v.object({ ref: v.string(), outcome })),
    changes: v.array(markChange),
    marker: v.string(),
    writingMs: spanMs,
    words: count,
    pastes: v.array(paste),
    edited: v.optional(editedPoints),
    aways: v.optional(count),
    awayMs: v.optional(spanMs),
  }),
)

export const pageSchema = exactly<Page>()(v.object({ schema, id, text: v.string(), topic, report }))

export const draftSchema = exactly<Draft>()(
  v.object({
    schema,
    ...place,
    text: v.string(),
    startedAtMs: instantMs,
    savedAtMs: instantMs,
    writingMs: spanMs,
    pastes: v.array(paste),
    aways: v.optional(count),
    awayMs: v.optional(spanMs),
  }),
)

export const keptSyllabusSchema = exactly<KeptSyllabus>()(
  v.object({ schema, id, source: v.string(), syllabus, addedAtMs: instantMs }),
)

export const editSchema = exactly<SyllabusEdit>()(
  v.object({ schema, id, source: v.string(), form: syllabusForm, savedAtMs: instantMs }),
)

export const importSchema = exactly<SyllabusImport>()(
  v.object({
    schema,
    id: v.literal('draft'),
    name: v.string(),
    tree: draftTree,
    savedAtMs: instantMs,
  }),
)

const touched = v.array(v.object({ ref: v.string(), lost: v.boolean() }))
const ways = v.array(v.picklist(WAYS_WRONG))

/** As typed: a half-written entry may hold anything. */
export const entrySchema = exactly<PaperEntry>()(
  v.object({
    schema,
    id,
    day: v.string(),
    source: v.string(),
    rows: v.array(
      v.object({
        key: id,
        question: v.string(),
        syllabusId: v.string(),
        topicId: v.string(),
        won: v.string(),
        outOf: v.string(),
        points: touched,
        wentWrong: ways,
        note: v.string(),
      }),
    ),
    savedAtMs: instantMs,
  }),
)

const marks = v.pipe(v.number(), v.finite(), v.minValue(0))

export const paperSchema = exactly<PaperQuestion>()(
  v.object({
    schema,
    id,
    ...place,
    day,
    source: v.string(),
    marksWon: marks,
    marksOutOf: marks,
    edited: v.optional(editedPoints),
    question: v.optional(v.string()),
    points: touched,
    wentWrong: v.optional(ways),
    note: v.optional(v.string()),
  }),
)

const whole = (least: number, most: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most))

export const settingsSchema = exactly<Settings>()(
  v.object({
    schema,
    sessionsNeeded: whole(1, 20),
    daysApart: whole(0, 365),
    secondsPerPoint: whole(10, 3600),
    exams: v.array(
      v.object({
        syllabusId: id,
        day,
        title: v.optional(v.string()),
        topicIds: v.optional(v.array(id)),
      }),
    ),
    ratings: v.array(v.object({ ...place, rating: v.picklist(['hard', 'middling', 'easy']) })),
    minutesADay: v.optional(whole(5, 600)),
    syllabusIds: v.optional(v.array(id)),
    tutorMarksCount: v.optional(v.boolean()),
    learnsFromChanges: v.optional(v.boolean()),
    calendarId: v.optional(id),
  }),
)

export const roundSchema = exactly<Round>()(
  v.object({
    schema,
    id,
    uid: id,
    kind: v.picklist(['drill', 'tonight']),
    syllabusId: id,
    title: v.string(),
    topics: v.array(topic),
    points: v.array(
      v.object({
        key: v.string(),
        topicId: id,
        ref: v.string(),
        why: v.optional(v.string()),
        tries: count,
        spentMs: spanMs,
        last: v.optional(
          v.object({
            text: v.string(),
            report,
            changed: v.nullable(outcome),
            atMs: instantMs,
          }),
        ),
      }),
    ),
    pile: v.array(v.string()),
    stage: v.picklist(['writing', 'marked', 'over']),
    typing: v.array(v.string()),
    startedAtMs: instantMs,
    savedAtMs: instantMs,
    spentMs: spanMs,
    budgetMs: v.optional(spanMs),
    leftOut: v.optional(count),
  }),
)

export const learnedSchema = exactly<LearnedWording>()(
  v.object({
    schema,
    ...place,
    ref: v.string(),
    checkId: id,
    text: v.string(),
    credited: v.boolean(),
    by: v.picklist(['student', 'tutor']),
    pupilId: v.optional(id),
    atMs: instantMs,
    pointText: v.string(),
  }),
)
