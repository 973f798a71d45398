/** The steps by which a draft is put right. Each gives a new draft; one that cannot be done gives the same. */
import { cleanText } from './tree'
import type { DraftLine, DraftTree, Role } from './types'

const at = ({ lines }: DraftTree, key: number): number =>
  lines.findIndex((line) => line.key === key)

const withLines = (tree: DraftTree, lines: readonly DraftLine[]): DraftTree => ({ ...tree, lines })

function changeLine(
  tree: DraftTree,
  key: number,
  change: (line: DraftLine) => DraftLine,
): DraftTree {
  const lines = tree.lines.map((line) => (line.key === key ? change(line) : line))
  return lines.some((line, i) => line !== tree.lines[i]) ? withLines(tree, lines) : tree
}

export const setTitle = (tree: DraftTree, title: string): DraftTree =>
  title === tree.title ? tree : { ...tree, title }

export const setText = (tree: DraftTree, key: number, text: string): DraftTree =>
  changeLine(tree, key, (line) => (line.text === text ? line : { ...line, text }))

export const setRef = (tree: DraftTree, key: number, ref: string): DraftTree =>
  changeLine(tree, key, (line) => {
    if (line.ref === ref) return line
    const { counted: _counted, ...rest } = line
    return { ...rest, ref }
  })

export const setRole = (tree: DraftTree, key: number, role: Role): DraftTree =>
  changeLine(tree, key, (line) => {
    if (line.role === role) return line
    const { why: _why, ...rest } = line
    return { ...rest, role }
  })

/** Two lines out of one, parted at `offset` of its text; what else the point has stays with the first. */
export function splitLine(tree: DraftTree, key: number, offset: number): DraftTree {
  const i = at(tree, key)
  const line = tree.lines[i]
  if (!line) return tree
  const [before, after] = [line.text.slice(0, offset).trim(), line.text.slice(offset).trim()]
  if (before === '' || after === '') return tree
  const { more: _more, caution: _caution, ...plain } = line
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

/** The line and the one above it become one, with what both have; a line that is left out is passed over. */
export function joinLine(tree: DraftTree, key: number): DraftTree {
  const i = at(tree, key)
  const line = tree.lines[i]
  const j = lastBefore(tree.lines, i, ({ role }) => role !== 'out' || line?.role === 'out')
  const above = tree.lines[j]
  if (!line || !above) return tree
  const ideas = [...(above.more?.ideas ?? []), ...(line.more?.ideas ?? [])]
  const joined: DraftLine = {
    ...above,
    text: `${above.text} ${line.text}`.trim(),
    ...(above.more || ideas.length > 0 ? { more: { ...above.more, ideas } } : {}),
  }
  return withLines(
    tree,
    tree.lines.map((other, n) => (n === j ? joined : other)).filter((other) => other.key !== key),
  )
}

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

/** -1 where there is none. */
function lastBefore(
  lines: readonly DraftLine[],
  i: number,
  wanted: (line: DraftLine) => boolean,
): number {
  let n = i - 1
  while (n >= 0 && !wanted(lines[n]!)) n -= 1
  return n
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

/** The points of every topic are counted anew: the topic's number, or its place, and the point's place in it. */
export function renumber(tree: DraftTree): DraftTree {
  let topics = 0
  let points = 0
  let head = ''
  const lines = tree.lines.map((line): DraftLine => {
    if (line.role === 'topic') {
      topics += 1
      points = 0
      head = line.ref || String(topics)
      return line
    }
    if (line.role !== 'point') return line
    points += 1
    return { ...line, ref: `${head || '1'}.${points}`, counted: true }
  })
  return withLines(tree, lines)
}

/** Points whose number another has before them get one of their own; all others keep theirs. */
export function renumberDoubles(tree: DraftTree): DraftTree {
  const seen = new Set(tree.lines.filter(({ role }) => role === 'point').map(({ ref }) => ref))
  const first = new Set<string>()
  const lines = tree.lines.map((line): DraftLine => {
    if (line.role !== 'point') return line
    if (line.ref !== '' && !first.has(line.ref)) {
      first.add(line.ref)
      return line
    }
    const ref = nextFree(line.ref || '0', seen)
    seen.add(ref)
    first.add(ref)
    return { ...line, ref, counted: true }
  })
  return withLines(tree, lines)
}

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

function nextFree(ref: string, taken: ReadonlySet<string>): string {
  for (let n = 2; ; n += 1) {
    const tried = `${ref}.${n}`
    if (!taken.has(tried)) return tried
  }
}

/** What is typed into a field goes through the same sieve as what was brought. */
export const typed = cleanText
