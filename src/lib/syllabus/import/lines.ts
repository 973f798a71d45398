/** Finding one's way in the lines of a draft. */
import type { DraftLine, DraftTree } from './types'

export const at = ({ lines }: DraftTree, key: number): number =>
  lines.findIndex((line) => line.key === key)

export const withLines = (tree: DraftTree, lines: readonly DraftLine[]): DraftTree => ({
  ...tree,
  lines,
})

/** -1 where there is none. */
export function lastBefore(
  lines: readonly DraftLine[],
  i: number,
  wanted: (line: DraftLine) => boolean,
): number {
  let n = i - 1
  while (n >= 0 && !wanted(lines[n]!)) n -= 1
  return n
}
