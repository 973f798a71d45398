/** The keys of the tutor's marking: the first letters of the words on the buttons. */
import type { Outcome } from '../marking/types'

export const KEY_OF: Readonly<Record<Outcome, string>> = {
  full: 'f',
  partial: 'p',
  missed: 'm',
  contradicted: 's',
}

export type MarkingKey = Outcome | 'next' | 'before' | 'comment' | 'none'

const OTHERS: Readonly<Record<string, MarkingKey>> = {
  arrowdown: 'next',
  arrowup: 'before',
  c: 'comment',
  delete: 'none',
  backspace: 'none',
}

/** What a key means; `undefined` for one that means nothing here, or is held with another. */
export function markingKey(event: {
  readonly key: string
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly altKey: boolean
}): MarkingKey | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined
  const key = event.key.toLowerCase()
  const outcome = (Object.keys(KEY_OF) as Outcome[]).find((one) => KEY_OF[one] === key)
  return outcome ?? OTHERS[key]
}

export const KEYS_SENTENCE =
  'Keys, while a point has the focus: F full, P part said, M missed, S says the opposite; Delete takes the mark back; C comment, Escape leaves it; ↓ and ↑ next point and the one before.'
