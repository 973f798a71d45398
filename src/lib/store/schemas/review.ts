/** The schemas of the tutor's side: records, and the two files that pupil and tutor exchange. */
import * as v from 'valibot'
import type {
  Pupil,
  PupilChecks,
  PupilFile,
  RecallFile,
  Remarks,
  ReturnFile,
  Review,
  ReviewedPoint,
  Sender,
  SharedPage,
  TutorNotes,
} from '../../review'
import { count, day, id, instantMs } from './basic'
import { exactly } from './exactly'
import { outcome, report } from './marking'
import { checkSchema } from './records'
import { topic } from './syllabus'

const schema = v.literal(1)

/** Names and comments come from people; an endless one is a mistake or worse. */
const name = v.pipe(v.string(), v.maxLength(100))
const comment = v.pipe(v.string(), v.maxLength(10_000))

export const senderSchema = exactly<Sender>()(v.object({ schema, id, name }))

/** A page in a pupil's file. */
export const sharedPageSchema = exactly<SharedPage>()(v.object({ text: v.string(), report }))

export const recallFileSchema = exactly<RecallFile>()(
  v.object({
    app: v.literal('Second Ink'),
    recallFile: schema,
    pupil: v.object({ id, name }),
    madeAtMs: instantMs,
    topics: v.array(topic),
    checks: v.array(
      v.object({ check: checkSchema, topic: count, page: v.optional(sharedPageSchema) }),
    ),
  }),
)

export const pupilSchema = exactly<Pupil>()(
  v.object({
    schema,
    id,
    name,
    madeAtMs: instantMs,
    openedAtMs: instantMs,
    checks: count,
    topics: v.array(
      v.object({
        syllabusId: id,
        topicId: id,
        title: v.string(),
        sessions: v.array(v.object({ day, full: count, points: count })),
        run: count,
        gaps: v.array(
          v.object({
            ref: v.string(),
            text: v.string(),
            outcome: v.picklist(['partial', 'missed', 'contradicted']),
          }),
        ),
      }),
    ),
  }),
)

export const pupilChecksSchema = exactly<PupilChecks>()(
  v.object({
    schema,
    id,
    madeAtMs: instantMs,
    topics: v.array(topic),
    checks: v.array(v.object({ check: checkSchema, topic: count, withText: v.boolean() })),
  }),
)

export const pupilFileSchema = exactly<PupilFile>()(
  v.object({ schema, id, madeAtMs: instantMs, text: v.string() }),
)

const reviewedPoint = exactly<ReviewedPoint>()(
  v.object({ ref: v.string(), outcome: v.nullable(outcome), comment, atMs: instantMs }),
)

export const reviewSchema = exactly<Review>()(
  v.object({
    schema,
    pupilId: id,
    checkId: id,
    blind: v.boolean(),
    comment,
    points: v.array(reviewedPoint),
    savedAtMs: instantMs,
  }),
)

export const tutorNotesSchema = exactly<TutorNotes>()(
  v.object({
    schema,
    pupilId: id,
    text: v.pipe(v.string(), v.maxLength(100_000)),
    seen: v.optional(v.object({ atMs: instantMs, checks: v.record(v.string(), count) })),
    savedAtMs: instantMs,
  }),
)

export const returnFileSchema = exactly<ReturnFile>()(
  v.object({
    app: v.literal('Second Ink'),
    returnFile: schema,
    pupilId: id,
    tutor: v.object({ id, name }),
    madeAtMs: instantMs,
    checks: v.array(v.object({ checkId: id, comment, points: v.array(reviewedPoint) })),
  }),
)

export const remarksSchema = exactly<Remarks>()(
  v.object({
    schema,
    id,
    tutor: name,
    madeAtMs: instantMs,
    comment,
    points: v.array(v.object({ ref: v.string(), comment })),
    takenOff: v.optional(
      v.object({
        comment,
        points: v.array(v.object({ ref: v.string(), outcome: v.nullable(outcome), comment })),
      }),
    ),
  }),
)
