/** What keeps the records safe from the browser itself: its promise not to clear them, and a backup now and then. */
import { isDemoId, type Check } from '$lib/recall'

const ASKED = 'second-ink-asked-to-keep'
const SAVED = 'second-ink-last-backup'
const SEEN = 'second-ink-checks-seen'
const DAY_MS = 86_400_000

/** A month of checks is what one can bear to lose. */
export const BACKUP_AFTER_DAYS = 30

/** What the browser answered when it was asked to keep the records. */
export type Promised = 'yes' | 'no'

/** The answer to the question that was put in this window; `undefined` where none was. */
export const asked: { current: Promise<Promised | undefined> | undefined } = { current: undefined }

/** Asks the browser once, at the first kept check, not to clear what is kept: some put the question to the user. */
export function askToKeepOnce(): void {
  asked.current ??= ask()
}

async function ask(): Promise<Promised | undefined> {
  try {
    if (localStorage.getItem(ASKED) !== null || (await navigator.storage.persisted()))
      return undefined
    const answer = (await navigator.storage.persist()) ? 'yes' : 'no'
    localStorage.setItem(ASKED, answer)
    return answer
  } catch {
    // A browser that cannot be asked. "Your data" says that nothing was promised.
    return undefined
  }
}

/** How many checks of the user's own were here when that was last known. */
export interface LastSeen {
  readonly checks: number
  readonly atMs: number
}

/** Some browsers clear a site's records and leave this note; where both go, nothing can be known. */
export function noteSeen(seen: LastSeen): void {
  try {
    localStorage.setItem(SEEN, JSON.stringify(seen))
  } catch {
    // Then it will not be missed.
  }
}

export function lastSeen(): LastSeen | undefined {
  try {
    const seen = JSON.parse(localStorage.getItem(SEEN) ?? 'null') as Partial<LastSeen> | null
    return typeof seen?.checks === 'number' && typeof seen.atMs === 'number'
      ? { checks: seen.checks, atMs: seen.atMs }
      : undefined
  } catch {
    return undefined
  }
}

/** The user removed one. */
export function noteRemoved(nowMs: number): void {
  const seen = lastSeen()
  if (seen) noteSeen({ checks: Math.max(0, seen.checks - 1), atMs: nowMs })
}

/** Whether a history that was here is not: records are gone that nobody took out here. */
export const isGone = (checks: number, unreadable: number, seen: LastSeen | undefined): boolean =>
  checks === 0 && unreadable === 0 && (seen?.checks ?? 0) > 0

export function noteBackup(nowMs: number): void {
  try {
    localStorage.setItem(SAVED, String(nowMs))
  } catch {
    // Then it is asked for once more than it need be.
  }
}

/** When a backup was last saved from this browser; `undefined` where none was, or where it is not known. */
export function lastBackupMs(): number | undefined {
  try {
    const kept = Number(localStorage.getItem(SAVED) ?? Number.NaN)
    return Number.isFinite(kept) ? kept : undefined
  } catch {
    return undefined
  }
}

/**
 * Whether there are checks of the user's own that no backup holds, the oldest of them for more than 30 days. The demo's
 * are in no backup, and never ask for one.
 */
export function backupIsDue(
  checks: readonly Pick<Check, 'atMs' | 'syllabusId'>[],
  lastMs: number | undefined,
  nowMs: number,
): boolean {
  const unsaved = checks.filter(
    ({ atMs, syllabusId }) => !isDemoId(syllabusId) && (lastMs === undefined || atMs > lastMs),
  )
  return unsaved.some(({ atMs }) => nowMs - atMs > BACKUP_AFTER_DAYS * DAY_MS)
}
