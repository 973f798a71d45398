/** Checks and the pages that were marked. A check is small, so that a whole history is read without its pages. */
import {
  byTime,
  countedCheck,
  defaultSettings,
  type Check,
  type MarkChange,
  type Settings,
  type TopicPlace,
} from '../recall'
import { putRecord } from './aside'
import { rawRecord, reading, writing } from './database'
import { StoreError } from './errors'
import { fromMemory, rawHistory, readHistory, wantsDigest, writeDigest } from './history'
import { checkKey, pageKey, remarksKey, SETTINGS_KEY } from './keys'
import { putLesson, type Lesson } from './learned'
import { forWriting, readRecord, type RecordOf } from './records'
import { endDraftIn, type Saving } from './windows'
import type { Draft, Page } from './types'

/**
 * Keeps a check and its page, both or neither; the draft that they come from ends in the same transaction, unless another
 * window has written on it since. Rejects where a check with this id is kept already.
 */
export const addCheck = (
  check: Check,
  page: Page,
  from?: { readonly draft: Draft } & Pick<Saving<'draft'>, 'known' | 'window'>,
): Promise<void> =>
  writing(async (store) => {
    if (page.id !== check.id)
      throw new StoreError('unknown', 'Nothing was kept: the page belongs to another check.')
    if ((await rawRecord(store, checkKey(check.id))) !== undefined)
      throw new StoreError(
        'unknown',
        'This check is kept already. Nothing was changed; you will find it under its topic.',
      )
    store.put(forWriting('check', check), checkKey(check.id))
    await putRecord(store, 'page', pageKey(page.id), page)
    if (from) await endDraftIn(store, 'draft', from.draft, from)
  })

/**
 * Every check of every topic, oldest first, and how many more are kept that cannot be read. Each has the changes that
 * count by the settings: every page that lists, plans or counts agrees on the tutor's marks.
 */
export async function listChecks(): Promise<{ checks: Check[]; unreadable: number }> {
  const { history, settings } = await reading(async (store) => ({
    settings: await settingsIn(store),
    history: await readHistory(store),
  }))
  if (wantsDigest(history)) digestSoon()
  const checks = history.checks.map((check) => countedCheck(check, settings))
  return { checks, unreadable: history.unreadable }
}

async function settingsIn(store: IDBObjectStore): Promise<Settings> {
  const read = readRecord('settings', await rawRecord(store, SETTINGS_KEY))
  return read.ok ? read.record : defaultSettings
}

let digesting: ReturnType<typeof setTimeout> | undefined

/** Once the page stands. It only makes the next reading faster: where it cannot be kept, nothing is lost or said. */
function digestSoon(): void {
  digesting ??= setTimeout(() => {
    digesting = undefined
    void writing(writeDigest).catch(() => undefined)
  }, 1_500)
}

/**
 * The checks of one topic, oldest first. Those of other topics are not looked into; one whose topic cannot be told
 * counts as unreadable here as well.
 */
export const listTopicChecks = ({
  syllabusId,
  topicId,
}: TopicPlace): Promise<{ checks: Check[]; unreadable: number }> =>
  reading(async (store) => {
    const settings = await settingsIn(store)
    const here = (check: Check) => check.syllabusId === syllabusId && check.topicId === topicId
    const known = await fromMemory(store)
    if (known?.unreadable === 0)
      return {
        checks: known.checks.filter(here).map((check) => countedCheck(check, settings)),
        unreadable: 0,
      }
    const read = (await rawHistory(store))
      .filter((raw) => !isElsewhere(raw, syllabusId, topicId))
      .map((raw) => readRecord('check', raw))
    const checks = read
      .flatMap((one) => (one.ok ? [countedCheck(one.record, settings)] : []))
      .filter(here)
      .sort(byTime)
    return { checks, unreadable: read.filter(({ ok }) => !ok).length }
  })

/** Whether a raw record says plainly that it is of another topic. */
function isElsewhere(raw: unknown, syllabusId: string, topicId: string): boolean {
  if (typeof raw !== 'object' || raw === null) return false
  const { syllabusId: itsSyllabus, topicId: itsTopic } = raw as Record<string, unknown>
  return (
    typeof itsSyllabus === 'string' &&
    typeof itsTopic === 'string' &&
    (itsSyllabus !== syllabusId || itsTopic !== topicId)
  )
}

/** `undefined` where there is none; rejects where there is one that cannot be read. */
export const getCheck = (id: string): Promise<Check | undefined> =>
  readOne('check', checkKey(id), 'check')

/** The page of a check. `undefined` where there is none; rejects where there is one that cannot be read. */
export const getPage = (id: string): Promise<Page | undefined> =>
  readOne('page', pageKey(id), 'page of this check')

/** Adds a changed mark to a check, whoever else is changing it, and gives the check as it is then. */
export const changeMark = (checkId: string, change: MarkChange, lesson?: Lesson): Promise<Check> =>
  writing(async (store) => {
    const raw = await rawRecord(store, checkKey(checkId))
    if (raw === undefined)
      throw new StoreError('unknown', 'The mark was not changed: this check is no longer kept.')
    const check = readable('check', raw, 'check')
    const changed = forWriting('check', { ...check, changes: [...check.changes, change] })
    store.put(changed, checkKey(checkId))
    if (lesson) await putLesson(store, lesson)
    return changed
  })

/** Removes a check and its page for good, readable or not: it is the user who asks. */
export const removeCheck = (id: string): Promise<void> =>
  writing(async (store) => {
    store.delete(checkKey(id))
    store.delete(pageKey(id))
    store.delete(remarksKey(id))
  })

const readOne = <K extends 'check' | 'page'>(kind: K, key: string, what: string) =>
  reading(async (store): Promise<RecordOf[K] | undefined> => {
    const raw = await rawRecord(store, key)
    return raw === undefined ? undefined : readable(kind, raw, what)
  })

function readable<K extends 'check' | 'page'>(kind: K, raw: unknown, what: string): RecordOf[K] {
  const read = readRecord(kind, raw)
  if (read.ok) return read.record
  throw new StoreError(
    'unreadable',
    `The ${what} is kept, but cannot be read. ${read.why} It stays as it is; "Your data" lists it.`,
  )
}
