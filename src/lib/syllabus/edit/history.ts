/** The steps of an edit, so that each can be taken back and done again. Pure: the time is a parameter. */
import type { SyllabusForm } from './form'

export interface Edits {
  readonly form: SyllabusForm
  /** What was before each step, the latest last. */
  readonly past: readonly Step[]
  /** What was after each step that was taken back, the next one to do again last. */
  readonly future: readonly Step[]
}

export interface Step {
  readonly form: SyllabusForm
  /** What the step did, for a sentence: "the text of 2.1", "2.3 dropped". */
  readonly what: string
  /** The field that was typed in, where it was typing. */
  readonly field?: string
  readonly atMs: number
}

/** Typing in one field is one step until there is a pause of this long. */
export const PAUSE_MS = 1500
/** Steps share what they do not change, so that they are small; at some number nobody goes back further. */
const MOST_STEPS = 500

export const beginEdits = (form: SyllabusForm): Edits => ({ form, past: [], future: [] })

/** `now.field` joins the step to the one before, where that was typing in the same field a moment ago. */
export function changeEdits(edits: Edits, form: SyllabusForm, now: Omit<Step, 'form'>): Edits {
  if (form === edits.form) return edits
  const last = edits.past.at(-1)
  const goesOn =
    last !== undefined &&
    now.field !== undefined &&
    last.field === now.field &&
    edits.future.length === 0 &&
    Math.abs(now.atMs - last.atMs) < PAUSE_MS
  const past = goesOn
    ? [...edits.past.slice(0, -1), { ...last, atMs: now.atMs }]
    : [...edits.past, { ...now, form: edits.form }].slice(-MOST_STEPS)
  return { form, past, future: [] }
}

/** The edits as they were before the last step; the same where there is none. */
export function undoEdit({ form, past, future }: Edits): Edits {
  const last = past.at(-1)
  if (!last) return { form, past, future }
  return { form: last.form, past: past.slice(0, -1), future: [...future, { ...last, form }] }
}

/** The edits with the step that was last taken back done again; the same where there is none. */
export function redoEdit({ form, past, future }: Edits): Edits {
  const next = future.at(-1)
  if (!next) return { form, past, future }
  return { form: next.form, past: [...past, { ...next, form }], future: future.slice(0, -1) }
}
