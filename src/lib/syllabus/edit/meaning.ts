/** Whether an edited point still asks for the same, so that its history goes on. */
import { writeIdea, writeWordings } from '../notation'
import type { Equation, Idea, Point } from '../types'

/** The key ideas that a point is marked by: its own, or those drafted from its text. */
export type IdeasOf = (point: Point) => readonly Idea[]

const ownIdeas: IdeasOf = ({ ideas }) => ideas

/**
 * True where nothing that decides a mark differs by more than spelling, case, spacing and punctuation: the text, the
 * ideas in whatever order, how many are enough, what loses the point, equation, value, steps in their order. The ref
 * and the cue decide nothing.
 */
export function sameMeaning(a: Point, b: Point, ideasOf = ownIdeas): boolean {
  return (
    sameText(a.text, b.text) &&
    sameLists(written(ideasOf(a)).sort(), written(ideasOf(b)).sort(), sameNotation) &&
    enough(a, ideasOf) === enough(b, ideasOf) &&
    sameLists([...(a.reject ?? [])].sort(), [...(b.reject ?? [])].sort(), sameText) &&
    sameLists(written(a.steps ?? []), written(b.steps ?? []), sameNotation) &&
    sameEquation(a.equation, b.equation) &&
    a.value?.number === b.value?.number &&
    a.value?.unit === b.value?.unit &&
    a.value?.tolerance === b.value?.tolerance
  )
}

/** A point of a check, and the ref under which the same point stands today; null where none means the same. */
export interface PointSince {
  readonly ref: string
  readonly now: string | null
}

/** What became of the points of a topic; those that are as they were are left out. */
export function pointsSince(
  was: readonly Point[],
  now: readonly Point[],
  ideasOf = ownIdeas,
): PointSince[] {
  const stayed = new Set(
    now
      .filter((point) => {
        const before = was.find(({ ref }) => ref === point.ref)
        return before !== undefined && sameMeaning(before, point, ideasOf)
      })
      .map(({ ref }) => ref),
  )
  const free = now.filter(({ ref }) => !stayed.has(ref))
  return was
    .filter(({ ref }) => !stayed.has(ref))
    .map((point) => {
      const at = free.findIndex((other) => sameMeaning(point, other, ideasOf))
      const [found] = at === -1 ? [] : free.splice(at, 1)
      return { ref: point.ref, now: found?.ref ?? null }
    })
}

const written = (ideas: readonly Idea[]): string[] => ideas.map(writeIdea)

const enough = (point: Point, ideasOf: IdeasOf): number => point.any ?? ideasOf(point).length

const sameLists = (
  a: readonly string[],
  b: readonly string[],
  same: (a: string, b: string) => boolean,
): boolean => a.length === b.length && a.every((text, i) => same(text, b[i]!))

function sameEquation(a: Equation | undefined, b: Equation | undefined): boolean {
  if (!a || !b) return a === b
  const symbols = Object.keys(a.where)
  return (
    a.written.replace(/\s/g, '') === b.written.replace(/\s/g, '') &&
    symbols.length === Object.keys(b.where).length &&
    symbols.every((symbol) => {
      const other = b.where[symbol]
      return other && sameNotation(writeWordings(a.where[symbol]!), writeWordings(other))
    })
  )
}

const wordsOf = (text: string): string[] => text.normalize('NFKC').toLowerCase().trim().split(/\s+/)

// Signs within words decide (−5, N/kg, half-life); those around them only part them.
const AROUND = /^[.,;:!?"'“”‘’()]+|[.,;:!?"'“”‘’()]+$/g

const sameText = (a: string, b: string): boolean =>
  sameLists(
    wordsOf(a).flatMap((word) => word.replace(AROUND, '') || []),
    wordsOf(b).flatMap((word) => word.replace(AROUND, '') || []),
    sameWord,
  )

/** In the notation every sign counts. */
const sameNotation = (a: string, b: string): boolean => sameLists(wordsOf(a), wordsOf(b), sameWord)

/**
 * The same word but for a slip of the pen: one letter too many, one too few, or two neighbours exchanged, in a word of
 * five letters or more that begins alike. A letter for another is none: alkane and alkene, sulfate and sulfite.
 */
function sameWord(a: string, b: string): boolean {
  if (a === b) return true
  const [long, short] = a.length >= b.length ? [a, b] : [b, a]
  if (short.length < 5 || long[0] !== short[0] || !/^\p{L}+$/u.test(a + b)) return false
  let at = 0
  while (at < short.length && long[at] === short[at]) at += 1
  if (long.length === short.length + 1) return long.slice(at + 1) === short.slice(at)
  return (
    long.length === short.length &&
    long[at] === short[at + 1] &&
    long[at + 1] === short[at] &&
    long.slice(at + 2) === short.slice(at + 2)
  )
}
