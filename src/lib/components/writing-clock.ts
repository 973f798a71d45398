/** Counts the time that a page is open and in front, and the time that it is out of sight between: that is not writing. */

export interface WritingClock {
  readonly elapsedMs: () => number
  /** How often the page went out of sight since it was first opened, and for how long together. */
  readonly away: () => Away
  /** To be called when the page comes to the front or leaves it. */
  readonly inFront: (front: boolean) => void
}

export interface Away {
  readonly aways: number
  readonly awayMs: number
}

/** `readMs` is a clock that never jumps, such as `performance.now`; `before` is the time written so far. */
export function writingClock(
  readMs: () => number,
  before = 0,
  awayBefore: Partial<Away> = {},
): WritingClock {
  let counted = before
  let aways = awayBefore.aways ?? 0
  let awayMs = awayBefore.awayMs ?? 0
  let awaySince: number | undefined
  let since: number | undefined = readMs()
  const elapsedMs = () => counted + (since === undefined ? 0 : readMs() - since)
  return {
    elapsedMs,
    away: () => ({
      aways,
      awayMs: awayMs + (awaySince === undefined ? 0 : readMs() - awaySince),
    }),
    inFront(front) {
      if (front) {
        since ??= readMs()
        if (awaySince !== undefined) awayMs += readMs() - awaySince
        awaySince = undefined
      } else {
        counted = elapsedMs()
        if (since !== undefined) {
          aways += 1
          awaySince = readMs()
        }
        since = undefined
      }
    },
  }
}
