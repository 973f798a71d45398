import { assertionsIn, type Assertion } from '../1-statements/assertions'
import type { ReadPage } from '../1-statements/page'
import type { Finder, Hit } from '../2-ideas/find'
import type { Occurrence } from '../2-ideas/occurrence'
import type { ReadyPoint, ReadyTopic, ReadyWording } from '../2-ideas/ready'

/**
 * Who each assertion of the page is about, by the terms of the points: what is said of the swash is not said of the backwash. A pronoun
 * carries the subject of the assertion before (rule 12).
 */
export class Subjects {
  readonly assertions: readonly Assertion[]
  /** For each assertion the points whose term is its subject. */
  private readonly owners: readonly ReadonlySet<number>[]
  /** The same without those that a pronoun carries on. */
  private readonly named: readonly ReadonlySet<number>[]
  private readonly firstOf: readonly number[]
  /** For each point the places of its term. */
  readonly places: readonly (readonly Hit[])[]
  /** For each point the keys of its term. */
  private readonly termKeys: readonly ReadonlySet<string>[]

  constructor(
    private readonly page: ReadPage,
    private readonly topic: ReadyTopic,
    finder: Finder,
  ) {
    const byStatement = page.statements.map((statement) => assertionsIn(page, statement))
    this.assertions = byStatement.flat()
    let count = 0
    this.firstOf = byStatement.map((list) => (count += list.length) - list.length)
    const terms = topic.points.map((_, index) => termOf(topic, index))
    this.termKeys = terms.map(
      (wordings) => new Set(wordings.flatMap((w) => w.units.flatMap((u) => u.keys))),
    )
    this.places = terms.map((wordings) =>
      wordings.flatMap((wording) => wholePlaces(wording, finder, page)),
    )
    const owners: Set<number>[] = this.assertions.map(() => new Set())
    this.places.forEach((hits, point) => {
      for (const hit of hits) {
        const a = this.at(hit.from)
        if (a >= 0 && hit.from < this.assertions[a]!.subject.to) owners[a]!.add(point)
      }
    })
    this.named = owners.map((points) => new Set(points))
    this.assertions.forEach((assertion, a) => {
      const before = this.assertions[a - 1]
      const near = before && assertion.statement - before.statement <= 1
      if (assertion.carries && owners[a]!.size === 0 && near) owners[a] = owners[a - 1]!
    })
    this.owners = owners
  }

  /** The assertion that token `i` is in, -1 for none. */
  at(i: number): number {
    const statement = this.page.statementOf[i]!
    if (statement < 0) return -1
    let a = this.firstOf[statement]!
    while (
      a + 1 < this.assertions.length &&
      this.assertions[a + 1]!.statement === statement &&
      this.assertions[a + 1]!.subject.from <= i
    )
      a += 1
    return a
  }

  /** Is the assertion about another point's term, one that this point does not speak of itself, and not about this point's own? */
  foreign(point: number, a: number): boolean {
    const owners = this.owners[a]
    if (!owners || owners.size === 0 || owners.has(point)) return false
    // A point without a term of its own (a list, a method) can be spoken of under any subject.
    if (this.termKeys[point]!.size === 0) return false
    const { weights } = this.topic.points[point]!
    for (const owner of owners) {
      for (const key of this.termKeys[owner]!)
        if (weights.has(key) || this.termKeys[point]!.has(key)) return false
    }
    // The term may come last: "…; this is a spit".
    const { subject, body } = this.assertions[a]!
    return !this.places[point]!.some((hit) => hit.from >= subject.from && hit.from < body.to)
  }

  /** Is the point's own term the subject of the assertion? */
  owns(point: number, a: number): boolean {
    return this.owners[a]?.has(point) ?? false
  }

  /** Does the subject of the assertion name the point's term? */
  names(point: number, a: number): boolean {
    return this.named[a]?.has(point) ?? false
  }

  /** An idea whose words stand in two assertions with subjects of their own is hardly said: `… is louder, and a sound with …`. */
  parted(o: Occurrence): Occurrence {
    const spread = [...new Set(o.at.map(({ from }) => this.at(from)))].sort((a, b) => a - b)
    const own = spread.slice(1).some((a) => {
      const { carries, subject } = this.assertions[a]!
      return !carries && PARTS.has(this.page.tokens[subject.from - 1]?.text ?? '')
    })
    return own ? { ...o, strength: o.strength * PARTED } : o
  }

  /** Does any word of the occurrence stand in an assertion about something else? */
  isForeign(point: number, o: Occurrence): boolean {
    return o.at.some(({ from }) => this.foreign(point, this.at(from)))
  }
}

/** What an idea keeps of its strength when its words are parted so. */
const PARTED = 0.65
const PARTS = new Set([',', 'and', ';', 'but', 'while', 'whereas'])

/** The wordings of the claim that names what the point is about: its exact term, or its first idea where that is a rare word or two. */
export function termOf(topic: ReadyTopic, index: number): readonly ReadyWording[] {
  const point = topic.points[index]!
  const term = termIndex(topic, index)
  return term === undefined ? [] : point.ideas[term]!.parts[0]!
}

const terms = new WeakMap<ReadyPoint, { readonly term: number | undefined }>()

/** Which of the point's ideas names what the point is about; undefined for a list, a method, or where none does. */
export function termIndex(topic: ReadyTopic, index: number): number | undefined {
  const point = topic.points[index]!
  const known = terms.get(point) ?? { term: findTerm(point) }
  terms.set(point, known)
  return known.term
}

function findTerm(point: ReadyPoint): number | undefined {
  if (point.point.any !== undefined || point.point.steps) return undefined
  const exact = point.ideas.findIndex(
    (idea) => idea.parts.length === 1 && idea.parts[0]!.every((w) => w.exact),
  )
  if (exact >= 0) return exact
  const [first] = point.ideas
  if (!first || first.given || first.parts.length !== 1 || point.ideas.length < 2) return undefined
  const opening = new Set(point.textKeys.slice(0, 2))
  const rare = first.parts[0]!.some(
    (w) =>
      w.units.length <= 2 &&
      w.units.every((u) => u.keys.every((k) => opening.has(k))) &&
      w.units.some((u) => u.keys.some((k) => (point.weights.get(k) ?? 0) >= 0.55)),
  )
  return rare ? 0 : undefined
}

// All words of the term, side by side.
function wholePlaces(wording: ReadyWording, finder: Finder, page: ReadPage): Hit[] {
  const [first, ...rest] = wording.units
  if (!first) return []
  return finder.hitsOf(first).filter((hit) => {
    if (hit.sign === -1) return false
    return rest.every((unit) =>
      finder
        .hitsOf(unit)
        .some(
          (other) =>
            other.sign === 1 &&
            Math.abs(other.from - hit.from) <= 3 &&
            page.statementOf[other.from] === page.statementOf[hit.from],
        ),
    )
  })
}
