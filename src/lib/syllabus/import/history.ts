/** Steps of a draft that can be taken back. */
import type { DraftTree } from './types'

export interface DraftHistory {
  readonly tree: DraftTree
  readonly past: readonly DraftTree[]
  readonly future: readonly DraftTree[]
}

const MOST = 200

export const beginHistory = (tree: DraftTree): DraftHistory => ({ tree, past: [], future: [] })

export const step = ({ tree, past, future }: DraftHistory, next: DraftTree): DraftHistory =>
  next === tree
    ? { tree, past, future }
    : { tree: next, past: [...past, tree].slice(-MOST), future: [] }

export function undo({ tree, past, future }: DraftHistory): DraftHistory {
  const before = past.at(-1)
  return before
    ? { tree: before, past: past.slice(0, -1), future: [tree, ...future] }
    : { tree, past, future }
}

export function redo({ tree, past, future }: DraftHistory): DraftHistory {
  const [next, ...rest] = future
  return next ? { tree: next, past: [...past, tree], future: rest } : { tree, past, future }
}
