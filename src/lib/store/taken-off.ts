/** What a pupil took off of a tutor's marks and comments, and how the tutor's next file is read after that. */
import type { Check, MarkChange } from '../recall'
import type { Remarks, ReviewedPoint } from '../review'

/** The marks that stand as the tutor's, by ref; `null` where one was taken back. */
export const marksOfTutor = ({ changes }: Check): ReadonlyMap<string, MarkChange['outcome']> =>
  new Map(changes.flatMap(({ ref, outcome, by }) => (by === 'tutor' ? [[ref, outcome]] : [])))

/** With nothing left but the memory of what was taken off, now and before. `marks` are those that stood. */
export function emptied(
  { comment, points, takenOff, ...remarks }: Remarks,
  marks: ReadonlyMap<string, MarkChange['outcome']>,
): Remarks {
  const off = new Map(takenOff?.points.map((point) => [point.ref, point]))
  const words = new Map(points.map((point) => [point.ref, point.comment]))
  const refs = new Set([...off.keys(), ...words.keys(), ...marks.keys()])
  return {
    ...remarks,
    comment: '',
    points: [],
    takenOff: {
      comment: comment || (takenOff?.comment ?? ''),
      points: [...refs].map((ref) => ({
        ref,
        outcome: marks.get(ref) ?? off.get(ref)?.outcome ?? null,
        comment: words.get(ref) ?? off.get(ref)?.comment ?? '',
      })),
    },
  }
}

interface Words {
  readonly comment: string
  readonly points: readonly ReviewedPoint[]
}

/** What a file says of a check, without what the student took off and the tutor says just as before. */
export function withoutTakenOff({ comment, points }: Words, takenOff: Remarks['takenOff']) {
  const before = new Map(takenOff?.points.map((point) => [point.ref, point]))
  const parts = points.map((point) => {
    const was = before.get(point.ref)
    const mark = point.outcome !== null && was?.outcome === point.outcome
    const words = point.comment !== '' && was?.comment === point.comment
    return {
      on: { ...point, outcome: mark ? null : point.outcome, comment: words ? '' : point.comment },
      off: {
        ref: point.ref,
        outcome: mark ? point.outcome : null,
        comment: words ? point.comment : '',
      },
      count: Number(mark) + Number(words),
    }
  })
  const whole = comment !== '' && takenOff?.comment === comment
  const count = parts.reduce((sum, part) => sum + part.count, Number(whole))
  return {
    on: { comment: whole ? '' : comment, points: parts.map(({ on }) => on) },
    off:
      count === 0
        ? undefined
        : {
            count,
            takenOff: {
              comment: whole ? comment : '',
              points: parts.flatMap((part) => (part.count > 0 ? [part.off] : [])),
            },
          },
  }
}
