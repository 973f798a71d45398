/** The tutor's marks of a check beside the marker's and the pupil's. */
import type { Outcome } from '../marking/types'
import { decidedOutcomes, type Check } from '../recall'
import { agreementOfMarks, type Agreement } from './agreement'
import { ofPupil } from './changed'
import type { ReturnFile, Review, ReviewedPoint, Sender } from './types'

export interface Beside {
  readonly ref: string
  readonly tutor: Outcome
  readonly marker: Outcome
  /** The marker's, where the pupil changed nothing. */
  readonly pupil: Outcome
}

/** Every point that the tutor marked, in the syllabus's order. */
export function marksBeside(check: Check, review: Review | undefined): Beside[] {
  const tutor = new Map(review?.points.map(({ ref, outcome }) => [ref, outcome]))
  return decidedOutcomes(ofPupil(check)).flatMap(({ ref, outcome: pupil, marker }): Beside[] => {
    const mark = tutor.get(ref) ?? null
    return mark === null ? [] : [{ ref, tutor: mark, marker, pupil }]
  })
}

export interface Agreements {
  readonly marker: Agreement
  readonly pupil: Agreement
}

/** The tutor in the rows, the other in the columns. */
export const agreementsOf = (marks: readonly Beside[]): Agreements => ({
  marker: agreementOfMarks(marks.map(({ tutor, marker }) => [tutor, marker])),
  pupil: agreementOfMarks(marks.map(({ tutor, pupil }) => [tutor, pupil])),
})

/** A point's mark or comment as the tutor has it now; one that is empty again is left out. */
export function withPoint(review: Review, point: ReviewedPoint): Review {
  const others = review.points.filter(({ ref }) => ref !== point.ref)
  const empty = point.outcome === null && point.comment === ''
  return { ...review, points: empty ? others : [...others, point] }
}

export const newReview = (pupilId: string, checkId: string): Review => ({
  schema: 1,
  pupilId,
  checkId,
  blind: true,
  comment: '',
  points: [],
  savedAtMs: 0,
})

/** Nothing of the tutor's notes, and nothing of another pupil. */
export const makeReturnFile = (
  pupilId: string,
  { id, name }: Sender,
  reviews: readonly Review[],
  madeAtMs: number,
): ReturnFile => ({
  app: 'Second Ink',
  returnFile: 1,
  pupilId,
  tutor: { id, name },
  madeAtMs,
  checks: reviews
    .filter((review) => review.pupilId === pupilId)
    .map(({ checkId, comment, points }) => ({ checkId, comment, points })),
})
