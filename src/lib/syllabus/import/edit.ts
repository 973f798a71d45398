/** The steps by which a draft is put right. Each gives a new draft; one that cannot be done gives the same. */
import { at, lastBefore, withLines } from './lines'
import { nextFree } from './renumber'
import { cleanText } from './tree'
import type { DraftLine, DraftTree, Role } from './types'

function changeLine(
  tree: DraftTree,
  key: number,
  change: (line: DraftLine) => DraftLine,
): DraftTree {
  const lines = tree.lines.map((line) => (line.key === key ? change(line) : line))
  return lines.some((line, i) => line !== tree.lines[i]) ? withLines(tree, lines) : tree
}

// What is typed goes through the same sieve as what was brought.
export function setTitle(tree: DraftTree, typed: string): DraftTree {
  const title = cleanText(typed)
  return title === tree.title ? tree : { ...tree, title }
}

export function setText(tree: DraftTree, key: number, typed: string): DraftTree {
  const text = cleanText(typed)
  return changeLine(tree, key, (line) => (line.text === text ? line : { ...line, text }))
}

export const setRef = (tree: DraftTree, key: number, typed: string): DraftTree =>
  changeLine(tree, key, (line) => {
    const ref = cleanText(typed)
    if (line.ref === ref) return line
    const { counted: _counted, ...rest } = line
    return { ...rest, ref }
  })

/** A line that becomes a point and has no number gets one after that of the line above it. */
export function setRole(tree: DraftTree, key: number, role: Role): DraftTree {
  const above = lastBefore(tree.lines, at(tree, key), (line) => line.role !== 'out')
  return changeLine(tree, key, (line) => {
    if (line.role === role) return line
    const { why: _why, ...rest } = line
    return role === 'point' && line.ref === ''
      ? { ...rest, role, ref: freeRef(tree, tree.lines[above]?.ref ?? ''), counted: true }
      : { ...rest, role }
  })
}

/** Put back, a line is what it was: a heading a topic, everything else a point. */
export const putBack = (tree: DraftTree, key: number): DraftTree =>
  setRole(tree, key, tree.lines[at(tree, key)]?.depth === undefined ? 'point' : 'topic')

/** Two lines out of one, parted at `offset` of its text; what else the point has stays with the first. */
export function splitLine(tree: DraftTree, key: number, offset: number): DraftTree {
  const i = at(tree, key)
  const line = tree.lines[i]
  if (!line) return tree
  // A sign that takes two places is not cut in half.
  const cut = /[\udc00-\udfff]/.test(line.text[offset] ?? '') ? offset - 1 : offset
  const [before, after] = [line.text.slice(0, cut).trim(), line.text.slice(cut).trim()]
  if (before === '' || after === '') return tree
  const { more: _more, caution: _caution, depth: _depth, ...plain } = line
  const role = line.role === 'topic' ? 'point' : line.role
  const next = {
    ...plain,
    role,
    key: freeKey(tree),
    ref: role === 'point' ? freeRef(tree, line.ref) : '',
    text: after,
    counted: true,
  }
  return withLines(tree, [
    ...tree.lines.slice(0, i),
    { ...line, text: before },
    next,
    ...tree.lines.slice(i + 1),
  ])
}

/**
 * The line and the one above it become one, with what both have; a line that is left out is passed over. Two that have
 * what only one point can have, such as an equation each, stay two.
 */
export function joinLine(tree: DraftTree, key: number): DraftTree {
  const i = at(tree, key)
  const line = tree.lines[i]
  const j = lastBefore(tree.lines, i, ({ role }) => role !== 'out' || line?.role === 'out')
  const above = tree.lines[j]
  if (!line || !above) return tree
  const more = joinedMore(above.more, line.more)
  // The caution of a topic that is one no more goes to the topic its points come to.
  const head = lastBefore(tree.lines, i, ({ role }) => role === 'topic')
  if (more === 'apart' || (line.caution && head === -1)) return tree
  const lines = tree.lines.map((other, n): DraftLine => {
    const joined: DraftLine =
      n === j
        ? { ...other, text: `${above.text} ${line.text}`.trim(), ...(more ? { more } : {}) }
        : other
    return n === head && line.caution
      ? { ...joined, caution: [other.caution, line.caution].filter(Boolean).join(' ') }
      : joined
  })
  return withLines(
    tree,
    lines.filter((other) => other.key !== key),
  )
}

function joinedMore(one: DraftLine['more'], other: DraftLine['more']): DraftLine['more'] | 'apart' {
  if (!one || !other) return one ?? other
  if (ALONE.some((field) => one[field] !== undefined && other[field] !== undefined)) return 'apart'
  const both = { ...other, ...one }
  const ideas = [...one.ideas, ...other.ideas]
  const beside = ideas.length > 0 || both.any !== undefined || both.equation || both.value
  if (both.steps && beside) return 'apart'
  const reject = [...(one.reject ?? []), ...(other.reject ?? [])]
  return { ...both, ideas, ...(reject.length > 0 ? { reject } : {}) }
}

/** One point has one of each. */
const ALONE = ['cue', 'any', 'equation', 'value', 'steps'] as const

/** Headings down to `depth` are topics, deeper ones are left out, so that their points belong to the topic above. */
export const topicsDownTo = (tree: DraftTree, depth: number): DraftTree =>
  withLines(
    tree,
    tree.lines.map((line): DraftLine => {
      if (line.depth === undefined) return line
      if (line.depth > depth) return { ...line, role: 'out', why: 'A heading within a topic' }
      const { why: _why, ...rest } = line
      return { ...rest, role: 'topic' }
    }),
  )

const freeKey = ({ lines }: DraftTree): number =>
  lines.reduce((most, { key }) => Math.max(most, key), -1) + 1

const freeRef = ({ lines }: DraftTree, ref: string): string =>
  nextFree(
    ref || '0',
    new Set(lines.filter(({ role }) => role === 'point').map((line) => line.ref)),
  )
