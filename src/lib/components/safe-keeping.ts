/** What keeps the records safe from the browser itself: its promise not to clear them, and a backup now and then. */
import { isDemoId, type Check } from '$lib/recall'

const ASKED = 'second-ink-asked-to-keep'
const SAVED = 'second-ink-last-backup'
const DAY_MS = 86_400_000

/** A month of checks is what one can bear to lose. */
export const BACKUP_AFTER_DAYS = 30

/** Asks the browser once, at the first kept check, not to clear what is kept: some put the question to the user. */
export async function askToKeepOnce(): Promise<void> {
  try {
    if (localStorage.getItem(ASKED) !== null || (await navigator.storage.persisted())) return
    localStorage.setItem(ASKED, 'yes')
    await navigator.storage.persist()
  } catch {
    // A browser that cannot be asked. "Your data" says that nothing was promised.
  }
}

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
