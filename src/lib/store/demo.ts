/** The demo's records: put in and taken out in one transaction each, beside the user's own and never among them. */
import { promisifyRequest } from 'idb-keyval'
import {
  DEMO_PREFIX,
  defaultSettings,
  isDemoId,
  withoutDemo,
  type Check,
  type Exam,
  type PaperQuestion,
  type TopicRating,
} from '../recall'
import { putRecord, sameJson } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { StoreError } from './errors'
import { checkKey, keptAt, kindAt, pageKey, paperKey, SETTINGS_KEY, syllabusKey } from './keys'
import { readRecord } from './records'
import type { KeptSyllabus, Page } from './types'

/** Every id of a record and of a syllabus in it begins with the demo's prefix. */
export interface DemoRecords {
  readonly syllabus: KeptSyllabus
  readonly checks: readonly { readonly check: Check; readonly page: Page }[]
  readonly papers: readonly PaperQuestion[]
  readonly exams: readonly Exam[]
  readonly ratings: readonly TopicRating[]
}

export interface DemoState {
  readonly loaded: boolean
  /** Pages that the user wrote on the demo's topics, marked or begun: they go with it. */
  readonly written: number
}

/** Puts the demo in, in place of an earlier one. All of it or nothing; what the user has is not touched. */
export const addDemo = (demo: DemoRecords): Promise<void> =>
  writing(async (store) => {
    const ids = [
      demo.syllabus.id,
      ...demo.checks.flatMap(({ check, page }) => [check.id, check.syllabusId, page.id]),
      ...demo.papers.flatMap(({ id, syllabusId }) => [id, syllabusId]),
      ...[...demo.exams, ...demo.ratings].map(({ syllabusId }) => syllabusId),
    ]
    if (!ids.every(isDemoId))
      throw new StoreError(
        'unknown',
        'The demo was not loaded: a record of it is not marked as one.',
      )
    await takeOut(store)
    await putRecord(store, 'syllabus', syllabusKey(demo.syllabus.id), demo.syllabus)
    for (const { check, page } of demo.checks) {
      await putRecord(store, 'check', checkKey(check.id), check)
      await putRecord(store, 'page', pageKey(page.id), page)
    }
    for (const paper of demo.papers) await putRecord(store, 'paper', paperKey(paper.id), paper)
    const settings = await ownSettings(store)
    await putRecord(store, 'settings', SETTINGS_KEY, {
      ...settings,
      exams: [...settings.exams, ...demo.exams],
      ratings: [...settings.ratings, ...demo.ratings],
    })
  })

/** Takes everything of the demo out, what was written on its topics included. */
export const removeDemo = (): Promise<void> => writing(takeOut)

export const demoState = (): Promise<DemoState> =>
  reading(async (store) => {
    // Asked on every page, of a history of thousands: its keys alone say that there is no demo.
    const all = await promisifyRequest(store.getAllKeys())
    if (!all.some((key) => isDemoId(idIn(String(key))))) return { loaded: false, written: 0 }
    const keys = demoKeys(await rawEntries(store))
    const written = keys.filter(
      (key) => (/^check\//.test(key) && !isDemoId(idIn(key))) || /^draft\//.test(key),
    )
    return { loaded: keys.length > 0, written: written.length }
  })

/** Whether what is kept at a key is the demo's: by its own id, or by the syllabus that it belongs to. */
export function isDemoRecord(key: string, raw: unknown, ofDemo: ReadonlySet<string>): boolean {
  const kind = kindAt(key)
  if (kind === undefined || kind === 'settings') return false
  const id = idIn(key)
  return (
    isDemoId(id) ||
    isDemoId(syllabusOf(raw)) ||
    (kind === 'draft' && id.startsWith(encodeURIComponent(DEMO_PREFIX))) ||
    (kind === 'page' && ofDemo.has(id))
  )
}

/** The ids of checks on the demo's topics: their pages do not say which syllabus they are of. */
export const demoCheckIds = (
  entries: readonly { readonly key: string; readonly raw: unknown }[],
): ReadonlySet<string> =>
  new Set(
    entries
      .filter(({ key, raw }) => kindAt(key) === 'check' && isDemoId(syllabusOf(raw)))
      .map(({ key }) => idIn(key)),
  )

function demoKeys(entries: readonly { key: string; raw: unknown }[]): string[] {
  const ofDemo = demoCheckIds(entries)
  return entries.filter(({ key, raw }) => isDemoRecord(key, raw, ofDemo)).map(({ key }) => key)
}

async function takeOut(store: IDBObjectStore): Promise<void> {
  for (const key of demoKeys(await rawEntries(store))) store.delete(key)
  const raw = await rawRecord(store, SETTINGS_KEY)
  const read = readRecord('settings', raw)
  if (!read.ok) return
  const settings = withoutDemo(read.record)
  if (settings === read.record) return
  if (sameJson(settings, defaultSettings)) store.delete(SETTINGS_KEY)
  else await putRecord(store, 'settings', SETTINGS_KEY, settings)
}

async function ownSettings(store: IDBObjectStore) {
  const read = readRecord('settings', await rawRecord(store, SETTINGS_KEY))
  return read.ok ? read.record : defaultSettings
}

/** What comes after the kind in a key. */
const idIn = (key: string): string => keptAt(key).slice(keptAt(key).indexOf('/') + 1)

const syllabusOf = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'syllabusId' in raw ? String(raw.syllabusId) : ''
