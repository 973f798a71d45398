/** Keeps a draft while it is typed: at most one write at a time, at most half a second behind the typing. */
import type { Draft } from '$lib/store'

/** A closed tab loses what was typed since the last write: less than a second, with the time that a write takes. */
const EVERY_MS = 500

export interface DraftKeeper<T = Draft> {
  /** The draft as it is now; it is kept soon. */
  readonly changed: (draft: T) => void
  /** Keeps now what is not kept yet; done when it is. Faults go to `onfault` and are not thrown. */
  readonly keepNow: () => Promise<void>
  /** Nothing more is kept, and what was being kept is done: a draft that is removed next does not come back. */
  readonly stop: () => Promise<void>
}

export interface Told<T = Draft> {
  readonly onkept: (draft: T) => void
  readonly onfault: (error: unknown) => void
}

export function keepDrafts<T = Draft>(
  save: (draft: T) => Promise<void>,
  told: Told<T>,
): DraftKeeper<T> {
  let waiting: T | undefined
  let timer: ReturnType<typeof setTimeout> | undefined
  let writing: Promise<void> = Promise.resolve()
  let stopped = false

  const keepNow = (): Promise<void> => {
    clearTimeout(timer)
    timer = undefined
    const draft = waiting
    waiting = undefined
    if (draft === undefined || stopped) return writing
    writing = writing.then(() => save(draft)).then(() => told.onkept(draft), told.onfault)
    return writing
  }
  return {
    changed(draft: T) {
      waiting = draft
      timer ??= setTimeout(() => void keepNow(), EVERY_MS)
    },
    keepNow,
    stop() {
      stopped = true
      clearTimeout(timer)
      return writing
    },
  }
}
