/** Older records -> today's. A record says in `schema` which version it has; the first is 1. */
import type { Kind } from './keys'

/** Turns a record of one version into one of the next. May throw on a damaged one. */
export type Step = (record: Readonly<Record<string, unknown>>) => Record<string, unknown>

/**
 * For each kind of record the steps that have been needed so far: the first turns version 1 into 2, and so on. A kind
 * is at version (number of its steps) + 1. Each version that was ever released keeps a fixture in the tests.
 */
export const STEPS: Readonly<Record<Kind, readonly Step[]>> = {
  check: [],
  page: [],
  draft: [],
  syllabus: [],
  paper: [],
  settings: [],
  edit: [],
  entry: [],
  round: [],
  learned: [],
  sender: [],
  remarks: [],
  pupil: [],
  'pupil-checks': [],
  'pupil-file': [],
  review: [],
  'tutor-notes': [],
  import: [],
}

export type Migrated =
  | { readonly ok: true; readonly record: unknown }
  | { readonly ok: false; readonly why: string; readonly newer: boolean }

/** A raw record brought to today's version, not yet validated. Never throws. */
export function migrate(raw: unknown, steps: readonly Step[]): Migrated {
  if (typeof raw !== 'object' || raw === null || !('schema' in raw))
    return { ok: false, newer: false, why: 'It is not a record: it has no version.' }
  const { schema } = raw
  const current = steps.length + 1
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1)
    return { ok: false, newer: false, why: 'It has no version that makes sense.' }
  if (schema > current)
    return {
      ok: false,
      newer: true,
      why: `It was written by a newer Second Ink (version ${schema}; this one reads up to ${current}).`,
    }
  let record: Record<string, unknown> = { ...raw }
  try {
    for (const step of steps.slice(schema - 1)) record = step(record)
  } catch {
    return { ok: false, newer: false, why: `It could not be brought from version ${schema}.` }
  }
  return { ok: true, record }
}
