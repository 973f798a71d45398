/** The pupil's side of the exchange: what goes to the tutor. What comes back: `returned.ts`. */
import { makeRecallFile, type RecallFile, type Sender, type ToShare } from '../review'
import { putRecord } from './aside'
import { rawRecord, reading, writing } from './database'
import { checkKey, pageKey, SENDER_KEY } from './keys'
import { readRecord } from './records'

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
