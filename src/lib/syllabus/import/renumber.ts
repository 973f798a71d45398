/** The numbers of a draft's points, counted anew. */
import { withLines } from './lines'
import type { DraftLine, DraftTree } from './types'

/** The points of every topic are counted anew: the topic's number, or its place, and the point's place in it. */
export function renumber(tree: DraftTree): DraftTree {
  const own = new Set(tree.lines.filter(({ role }) => role === 'topic').map(({ ref }) => ref))
  const taken = new Set<string>()
  let topics = 0
  let points = 0
  let head = ''
  // A second topic of one number counts as one without; a counted number is no other topic's own.
  const begin = (ref: string) => {
    topics += 1
    points = 0
    head = ref !== '' && !taken.has(ref) ? ref : counted()
    taken.add(head)
  }
  const counted = () => {
    let n = Math.max(topics, 1)
    while (taken.has(String(n)) || own.has(String(n))) n += 1
    return String(n)
  }
  const lines = tree.lines.map((line): DraftLine => {
    if (line.role === 'topic') begin(line.ref)
    if (line.role !== 'point') return line
    if (head === '') {
      head = counted()
      taken.add(head)
    }
    points += 1
    return { ...line, ref: `${head}.${points}`, counted: true }
  })
  return withLines(tree, lines)
}

/** Points whose number another has before them get one of their own; all others keep theirs. */
export function renumberDoubles(tree: DraftTree): DraftTree {
  const seen = new Set(tree.lines.filter(({ role }) => role === 'point').map(({ ref }) => ref))
  const first = new Set<string>()
  // Where to go on counting: thousands may have the same one.
  const from = new Map<string, number>()
  const lines = tree.lines.map((line): DraftLine => {
    if (line.role !== 'point') return line
    if (line.ref !== '' && !first.has(line.ref)) {
      first.add(line.ref)
      return line
    }
    const base = line.ref || '0'
    const ref = nextFree(base, seen, from.get(base))
    from.set(base, Number(ref.slice(base.length + 1)) + 1)
    seen.add(ref)
    first.add(ref)
    return { ...line, ref, counted: true }
  })
  return withLines(tree, lines)
}

/** `ref.2`, or the first after it that is not taken. */
export function nextFree(ref: string, taken: ReadonlySet<string>, from = 2): string {
  for (let n = from; ; n += 1) {
    const tried = `${ref}.${n}`
    if (!taken.has(tried)) return tried
  }
}
