/** Moving a line, or a topic with its points, up and down a draft. */
import { at, lastBefore, withLines } from './lines'
import type { DraftLine, DraftTree, Role } from './types'

/** Past the line beside it; a topic moves with its points, past the whole topic beside it. */
export function moveLine(tree: DraftTree, key: number, by: -1 | 1): DraftTree {
  const { lines } = tree
  const i = at(tree, key)
  const line = lines[i]
  if (!line) return tree
  const end = line.role === 'topic' ? blockEnd(lines, i) : i + 1
  const to = by === -1 ? startBefore(lines, i, line.role) : endAfter(lines, end, line.role)
  if (to === undefined) return tree
  const block = lines.slice(i, end)
  return withLines(
    tree,
    by === -1
      ? [...lines.slice(0, to), ...block, ...lines.slice(to, i), ...lines.slice(end)]
      : [...lines.slice(0, i), ...lines.slice(end, to), ...block, ...lines.slice(to)],
  )
}

const blockEnd = (lines: readonly DraftLine[], i: number): number => {
  const next = lines.findIndex(({ role }, n) => n > i && role === 'topic')
  return next === -1 ? lines.length : next
}

function startBefore(lines: readonly DraftLine[], i: number, role: Role): number | undefined {
  if (role !== 'topic') return i > 0 ? i - 1 : undefined
  const before = lastBefore(lines, i, (line) => line.role === 'topic')
  return before === -1 ? undefined : before
}

function endAfter(lines: readonly DraftLine[], end: number, role: Role): number | undefined {
  if (end >= lines.length) return undefined
  return role === 'topic' ? blockEnd(lines, end) : end + 1
}
