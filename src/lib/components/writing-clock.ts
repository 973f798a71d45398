/** Counts the time that a page is open and in front. The time asleep or behind another window is not writing. */

export interface WritingClock {
  readonly elapsedMs: () => number
  /** To be called when the page comes to the front or leaves it. */
  readonly inFront: (front: boolean) => void
}

/** `readMs` is a clock that never jumps, such as `performance.now`; `before` is the time written so far. */
export function writingClock(readMs: () => number, before = 0): WritingClock {
  let counted = before
  let since: number | undefined = readMs()
  const elapsedMs = () => counted + (since === undefined ? 0 : readMs() - since)
  return {
    elapsedMs,
    inFront(front) {
      if (front) {
        since ??= readMs()
      } else {
        counted = elapsedMs()
        since = undefined
      }
    },
  }
}
