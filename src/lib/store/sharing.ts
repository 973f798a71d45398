/** The pupil's side of the exchange: what goes to the tutor, and what comes back. */
import type { Check, MarkChange } from '../recall'
import { makeRecallFile, type RecallFile, type Remarks, type Sender, type ToShare } from '../review'
import { putRecord } from './aside'
import { rawRecord, reading, writing } from './database'
import { StoreError } from './errors'
import { readReturnFile } from './exchange'
import { checkKey, pageKey, remarksKey, SENDER_KEY } from './keys'
import { forWriting, readRecord } from './records'

/** `undefined` where no file was saved for anybody yet. */
export const getSender = (): Promise<Sender | undefined> =>
  reading(async (store) => {
    const read = readRecord('sender', await rawRecord(store, SENDER_KEY))
    return read.ok ? read.record : undefined
  })

/** Keeps the name; the id is made by `newId` the first time and stays. Gives what is kept then. */
export const nameSender = (name: string, newId: () => string): Promise<Sender> =>
  writing(async (store) => {
    const read = readRecord('sender', await rawRecord(store, SENDER_KEY))
    const sender: Sender = { schema: 1, id: read.ok ? read.record.id : newId(), name }
    await putRecord(store, 'sender', SENDER_KEY, sender)
    return sender
  })

/** The file for the tutor. Checks whose page is not kept are left out; how many, is told. */
export const exportRecall = (
  sender: Sender,
  checkIds: readonly string[],
  withText: boolean,
  nowMs: number = Date.now(),
): Promise<{ file: RecallFile; leftOut: number }> =>
  reading(async (store) => {
    const shared = await Promise.all(
      checkIds.map(async (id): Promise<ToShare | undefined> => {
        const [check, page] = await Promise.all([
          rawRecord(store, checkKey(id)),
          rawRecord(store, pageKey(id)),
        ])
        const readCheck = readRecord('check', check)
        const readPage = readRecord('page', page)
        return readCheck.ok && readPage.ok
          ? { check: readCheck.record, page: readPage.record }
          : undefined
      }),
    )
    const good = shared.filter((one) => one !== undefined)
    return {
      file: makeRecallFile(sender, good, withText, nowMs),
      leftOut: shared.length - good.length,
    }
  })

/** What came back from the tutor on a check; `undefined` where nothing did. */
export const getRemarks = (checkId: string): Promise<Remarks | undefined> =>
  reading(async (store) => {
    const read = readRecord('remarks', await rawRecord(store, remarksKey(checkId)))
    return read.ok ? read.record : undefined
  })

export interface Returned {
  readonly tutor: string
  /** Checks that have the tutor's marks and comments now. */
  readonly checks: number
  /** Checks whose marks are new or another than before. */
  readonly changed: readonly Check[]
  /** Checks of the file that are not on this device. */
  readonly unknown: number
  /** Checks that have later marks of the tutor already. */
  readonly older: number
}

/** Opens a file from a tutor, from its text: all of it or nothing. Twice changes nothing more. */
export async function openReturnFile(text: string): Promise<Returned> {
  const file = readReturnFile(text)
  return writing(async (store) => {
    const sender = readRecord('sender', await rawRecord(store, SENDER_KEY))
    if (sender.ok && sender.record.id !== file.pupilId)
      throw new StoreError(
        'unreadable',
        'This file from a tutor is for somebody else. Nothing on this device was changed.',
      )
    const done = { checks: 0, unknown: 0, older: 0 }
    const changed: Check[] = []
    for (const { checkId, comment, points } of file.checks) {
      const check = readRecord('check', await rawRecord(store, checkKey(checkId)))
      const before = readRecord('remarks', await rawRecord(store, remarksKey(checkId)))
      if (!check.ok) done.unknown += 1
      else if (before.ok && before.record.madeAtMs > file.madeAtMs) done.older += 1
      else {
        done.checks += 1
        const changes = tutorChanges(check.record, points, file.madeAtMs)
        if (changes.length > 0) {
          const next = { ...check.record, changes: [...check.record.changes, ...changes] }
          store.put(forWriting('check', next), checkKey(checkId))
          changed.push(next)
        }
        const comments = points.flatMap((point) =>
          point.comment === '' ? [] : [{ ref: point.ref, comment: point.comment }],
        )
        const remarks: Remarks = {
          schema: 1,
          id: checkId,
          tutor: file.tutor.name,
          madeAtMs: file.madeAtMs,
          comment,
          points: comments,
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
  const here = new Map(
    check.changes.flatMap(({ ref, outcome, by }) => (by === 'tutor' ? [[ref, outcome]] : [])),
  )
  return check.marks.flatMap(({ ref }): MarkChange[] => {
    const point = given.get(ref)
    const outcome = point?.outcome ?? null
    if ((here.get(ref) ?? null) === outcome) return []
    return [{ ref, outcome, by: 'tutor', atMs: point?.atMs ?? madeAtMs }]
  })
}
