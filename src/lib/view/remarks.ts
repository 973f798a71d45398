/** What came back from a tutor, beside the other marks of a check. */
import type { Outcome } from '../marking/types'
import { decidedOutcomes, type Check, type Settings } from '../recall'
import { ofPupil, type Remarks } from '../review'
import { counted } from './words'

export interface Remark {
  /** The tutor's mark; absent where they gave none, or took it back. */
  readonly outcome?: Outcome
  /** The student's own mark, where they had changed the marker's. */
  readonly student?: Outcome
  readonly comment: string
}

export interface TutorWords {
  readonly name: string
  /** Whose marks count, and by which setting. */
  readonly sentence: string
  readonly comment: string
  readonly points: ReadonlyMap<string, Remark>
}

/** The pupil has taken off all that was written. */
const nothingLeft = ({ comment, points, takenOff }: Remarks): boolean =>
  takenOff !== undefined && comment === '' && points.length === 0

/** `undefined` where no tutor has marked the check or written on it. `check` has all its changes, counted or not. */
export function tutorWords(
  check: Check,
  remarks: Remarks | undefined,
  settings: Pick<Settings, 'tutorMarksCount'>,
): TutorWords | undefined {
  const marks = new Map<string, Outcome>()
  for (const { ref, outcome, by } of check.changes)
    if (by === 'tutor') {
      if (outcome === null) marks.delete(ref)
      else marks.set(ref, outcome)
    }
  if (marks.size === 0 && (!remarks || nothingLeft(remarks))) return undefined

  const comments = new Map(remarks?.points.map(({ ref, comment }) => [ref, comment]))
  const students = new Map(
    decidedOutcomes(ofPupil(check)).flatMap(({ ref, outcome, by }) =>
      by === 'student' ? [[ref, outcome]] : [],
    ),
  )
  const refs = new Set([...marks.keys(), ...comments.keys()])
  const points = [...refs].map((ref): [string, Remark] => {
    const outcome = marks.get(ref)
    const student = students.get(ref)
    return [
      ref,
      {
        comment: comments.get(ref) ?? '',
        ...(outcome ? { outcome } : {}),
        ...(student ? { student } : {}),
      },
    ]
  })
  const name = remarks?.tutor || 'Your tutor'
  return {
    name,
    comment: remarks?.comment ?? '',
    points: new Map(points),
    sentence:
      marks.size === 0
        ? `${name} wrote on this check.`
        : `${name} marked ${counted(marks.size, 'point')}. ${
            settings.tutorMarksCount === false
              ? 'By your settings these marks are shown and do not count.'
              : 'These marks count, until you change one; “Settings” can say otherwise.'
          }`,
  }
}
