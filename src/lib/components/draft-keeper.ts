/** Keeps a draft while it is typed: at most one write at a time, at most a quarter of a second behind the typing. */
import type { Draft } from '$lib/store'

/** A killed browser loses what was typed since the last write: this, with the time that a write takes, stays under a second. */
const EVERY_MS = 250
/** What could not be kept is tried again, also when nothing more is typed: there may be room by then. */
const AGAIN_MS = 5_000

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
  let again: ReturnType<typeof setTimeout> | undefined
  let writing: Promise<void> | undefined
  let stopped = false

  const clear = () => {
    clearTimeout(timer)
    clearTimeout(again)
    timer = undefined
  }

  /** Until nothing is waiting: of what was typed during a slow write only the last is written. */
  async function writeAll(): Promise<void> {
    while (waiting !== undefined && !stopped) {
      const draft = waiting
      waiting = undefined
      try {
        await save(draft)
      } catch (error) {
        waiting ??= draft
        again = setTimeout(() => void keepNow(), AGAIN_MS)
        return told.onfault(error)
      }
      told.onkept(draft)
    }
  }

  const keepNow = (): Promise<void> => {
    clear()
    writing ??= writeAll().finally(() => (writing = undefined))
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
      clear()
      return writing ?? Promise.resolve()
    },
  }
}
