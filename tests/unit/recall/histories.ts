/** Made-up histories of one topic, for the tables: a mark a letter, so that a check is read at a glance. */
import { defaultSettings, type Check, type Settings } from '../../../src/lib/recall'
import type { Outcome } from '../../../src/lib/marking/types'

const OUTCOME: Readonly<Record<string, Outcome>> = {
  f: 'full',
  p: 'partial',
  m: 'missed',
  c: 'contradicted',
}

/** `marks` 'fpm' makes the points 1.1 full, 1.2 partial, 1.3 missed. `at` is an ISO instant. */
export function check(at: string, marks: string, more: Partial<Check> = {}): Check {
  return {
    schema: 1,
    id: `${at} ${marks}`,
    kind: 'check',
    syllabusId: 'shores',
    topicId: 'drift',
    topicTitle: 'Longshore drift',
    atMs: Date.parse(at),
    zone: 'UTC',
    marks: [...marks].map((letter, i) => ({
      ref: `1.${i + 1}`,
      outcome: OUTCOME[letter] ?? 'missed',
    })),
    changes: [],
    marker: '1.0.0',
    writingMs: 300_000,
    words: 80,
    pastes: [],
    ...more,
  }
}

/** Noon checks from a line such as '03-01 full, 03-04 gaps': month and day of 2027, in UTC. */
export const history = (line: string): Check[] =>
  line
    .split(', ')
    .filter((entry) => entry !== '')
    .map((entry) => {
      const [day, result] = entry.split(' ')
      return check(`2027-${day}T12:00:00Z`, result === 'full' ? 'ff' : 'fm')
    })

export const settings = (more: Partial<Settings> = {}): Settings => ({
  ...defaultSettings,
  ...more,
})

export const noon = (day: string) => ({ nowMs: Date.parse(`${day}T12:00:00Z`), zone: 'UTC' })
