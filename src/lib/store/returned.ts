/** What comes back to the pupil from a tutor: marks, comments, and the way back. */
import type { Check, MarkChange } from '../recall'
import type { Remarks } from '../review'
import { putRecord } from './aside'
import { rawRecord, reading, writing } from './database'
import { StoreError } from './errors'
import { readReturnFile } from './exchange'
import { checkKey, remarksKey, SENDER_KEY } from './keys'
import { forgetTutor } from './learned'
import { forWriting, readRecord } from './records'
import { emptied, marksOfTutor, withoutTakenOff } from './taken-off'

/** What came back from the tutor on a check; `undefined` where nothing did. */
export const getRemarks = (checkId: string): Promise<Remarks | undefined> =>
  reading(async (store) => {
    const read = readRecord('remarks', await rawRecord(store, remarksKey(checkId)))
    return read.ok ? read.record : undefined
  })

export interface Returning {
  readonly check: Check
  readonly changes: readonly MarkChange[]
}

export interface Returned {
  readonly tutor: string
  /** Checks that have the tutor's marks and comments now. */
  readonly checks: number
  /** Checks whose marks are new or another than before, and these marks. */
  readonly changed: readonly Returning[]
  /** Checks of the file that are not on this device. */
  readonly unknown: number
  /** Checks that have later marks of the tutor already. */
  readonly older: number
  /** Marks and comments that the student took off before, and that stay off. */
  readonly leftOff: number
}

/**
 * Opens a file from a tutor, from its text: all of it or nothing. Twice changes nothing more, but that what was taken off stays off
 * the first time, and is there again the second time.
 */
export async function openReturnFile(text: string): Promise<Returned> {
  const file = readReturnFile(text)
  return writing(async (store) => {
    const sender = readRecord('sender', await rawRecord(store, SENDER_KEY))
    if (sender.ok && sender.record.id !== file.pupilId)
      throw new StoreError(
        'unreadable',
        'This file from a tutor is for somebody else. Nothing on this device was changed.',
      )
    const done = { checks: 0, unknown: 0, older: 0, leftOff: 0 }
    const changed: Returning[] = []
    for (const { checkId, comment, points } of file.checks) {
      const check = readRecord('check', await rawRecord(store, checkKey(checkId)))
      const before = readRecord('remarks', await rawRecord(store, remarksKey(checkId)))
      if (!check.ok) done.unknown += 1
      else if (before.ok && before.record.madeAtMs > file.madeAtMs) done.older += 1
      else {
        done.checks += 1
        const sameFile = before.ok && before.record.madeAtMs === file.madeAtMs
        const { on, off } = withoutTakenOff(
          { comment, points },
          before.ok && !sameFile ? before.record.takenOff : undefined,
        )
        done.leftOff += off?.count ?? 0
        const changes = tutorChanges(check.record, on.points, file.madeAtMs)
        if (changes.length > 0) {
          const next = { ...check.record, changes: [...check.record.changes, ...changes] }
          store.put(forWriting('check', next), checkKey(checkId))
          changed.push({ check: next, changes })
        }
        const comments = on.points.flatMap((point) =>
          point.comment === '' ? [] : [{ ref: point.ref, comment: point.comment }],
        )
        const remarks: Remarks = {
          schema: 1,
          id: checkId,
          tutor: file.tutor.name,
          madeAtMs: file.madeAtMs,
          comment: on.comment,
          points: comments,
          ...(off ? { takenOff: off.takenOff } : {}),
        }
        await putRecord(store, 'remarks', remarksKey(checkId), remarks)
      }
    }
    if (done.checks + done.older === 0)
      throw new StoreError(
        'unreadable',
        'None of the checks in this file from a tutor is on this device. Nothing was changed.',
      )
    return { tutor: file.tutor.name, changed, ...done }
  })
}

/** The tutor's marks that differ from those kept here; a mark that the tutor took back is taken back here. */
function tutorChanges(
  check: Check,
  points: readonly { ref: string; outcome: MarkChange['outcome']; atMs: number }[],
  madeAtMs: number,
): MarkChange[] {
  const given = new Map(points.map((point) => [point.ref, point]))
  const here = marksOfTutor(check)
  return check.marks.flatMap(({ ref }): MarkChange[] => {
    const point = given.get(ref)
    const outcome = point?.outcome ?? null
    if ((here.get(ref) ?? null) === outcome) return []
    return [{ ref, outcome, by: 'tutor', atMs: point?.atMs ?? madeAtMs }]
  })
}

/** Takes a tutor's marks and comments off a check, with what they taught, and remembers which; gives the check as it is then. */
export const removeRemarks = (checkId: string, nowMs: number = Date.now()): Promise<Check> =>
  writing(async (store) => {
    const read = readRecord('check', await rawRecord(store, checkKey(checkId)))
    if (!read.ok)
      throw new StoreError('unknown', 'Nothing was removed: this check is no longer kept.')
    const check = read.record
    const changes = tutorChanges(check, [], nowMs)
    const next = forWriting('check', { ...check, changes: [...check.changes, ...changes] })
    store.put(next, checkKey(checkId))
    const remarks = readRecord('remarks', await rawRecord(store, remarksKey(checkId)))
    if (remarks.ok)
      store.put(
        forWriting('remarks', emptied(remarks.record, marksOfTutor(check))),
        remarksKey(checkId),
      )
    await forgetTutor(store, check)
    return next
  })
