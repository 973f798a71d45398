/** The checks of one topic -> the rows of its lists and of its grid. */
import type { Outcome } from '../marking/types'
import {
  byTime,
  dayOf,
  marksOfToday,
  recallOf,
  sessionsOf,
  type Check,
  type Day,
  type Recall,
  type Session,
} from '../recall'
import { dayWords, timeWords } from './dates'
import { recallWords } from './sentences'
import { counted, durationWords } from './words'

/** One check in words. */
export interface CheckRow {
  readonly id: string
  readonly when: string
  readonly recall: string
  readonly facts: string
  /** Why it does not count towards the status; empty for a check that does. */
  readonly apart: string
}

/** Latest first. */
export function checkRows(checks: readonly Check[]): CheckRow[] {
  const counting = new Set(sessionsOf(checks).map(({ check }) => check.id))
  return [...checks]
    .sort(byTime)
    .reverse()
    .map((check) => ({
      id: check.id,
      when: `${dayWords(dayOf(check))}, ${timeWords(check.atMs, check.zone)}`,
      recall: `${recallWords(recallOf(check))} full`,
      facts: `${counted(check.words, 'word')}, ${durationWords(check.writingMs)}`,
      apart: apartOf(check, counting),
    }))
}

function apartOf(check: Check, counting: ReadonlySet<string>): string {
  if (check.kind === 'gap') return 'gap check'
  return counting.has(check.id) ? '' : 'a second try that day: practice'
}

/** Points × sessions: a row a point, a cell a session; `undefined` where a session did not have the point as it is. */
export interface Grid {
  readonly days: readonly Day[]
  /** For each day the check that counts, and its recall. */
  readonly sessions: readonly { readonly checkId: string; readonly recall: Recall }[]
  readonly rows: readonly {
    readonly ref: string
    readonly cells: readonly (Outcome | undefined)[]
  }[]
}

/** Oldest session first. Points come in the order of the latest session, those it no longer had after them. */
export function gridOf(sessions: readonly Session[]): Grid {
  const marks = sessions.map(
    ({ check }) => new Map(marksOfToday(check).map(({ ref, outcome }) => [ref, outcome])),
  )
  const refs = new Set([...marks].reverse().flatMap((session) => [...session.keys()]))
  return {
    days: sessions.map(({ day }) => day),
    sessions: sessions.map(({ check, recall }) => ({ checkId: check.id, recall })),
    rows: [...refs].map((ref) => ({ ref, cells: marks.map((session) => session.get(ref)) })),
  }
}
