/** Drills and the night before, kept while they go on and until the next begins in their place. */
import type { Check, Round } from '../recall'
import { putRecord } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { checkKey, keysOf, pageKey, roundKey } from './keys'
import { readRecord } from './records'
import type { Page } from './types'

/** `undefined` where there is none, or one that cannot be read: that one is set aside when the next is kept. */
export const getRound = (id: string): Promise<Round | undefined> =>
  reading(async (store) => {
    const read = readRecord('round', await rawRecord(store, roundKey(id)))
    return read.ok ? read.record : undefined
  })

/** Those that can be read, the last one first. */
export const listRounds = (): Promise<Round[]> =>
  reading(async (store) =>
    (await rawEntries(store, keysOf('round')))
      .flatMap(({ raw }) => {
        const read = readRecord('round', raw)
        return read.ok ? [read.record] : []
      })
      .sort((a, b) => b.savedAtMs - a.savedAtMs),
  )

export const saveRound = (round: Round): Promise<void> =>
  writing((store) => putRecord(store, 'round', roundKey(round.id), round))

/** Ends a round: it and the gap checks that come of it, all or nothing. Ended twice, the checks are kept once. */
export const finishRound = (
  round: Round,
  made: readonly { readonly check: Check; readonly page: Page }[],
): Promise<void> =>
  writing(async (store) => {
    for (const { check, page } of made) {
      if ((await rawRecord(store, checkKey(check.id))) !== undefined) continue
      await putRecord(store, 'check', checkKey(check.id), check)
      await putRecord(store, 'page', pageKey(page.id), page)
    }
    await putRecord(store, 'round', roundKey(round.id), round)
  })

export const removeRound = (id: string): Promise<void> =>
  writing(async (store) => {
    if (readRecord('round', await rawRecord(store, roundKey(id))).ok) store.delete(roundKey(id))
  })
