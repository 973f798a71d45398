import { assertionsOf, type Assertion } from '../1-statements/assertions'
import type { ReadPage } from '../1-statements/page'
import type { Finder, Hit } from '../2-ideas/find'
import type { Occurrence } from '../2-ideas/occurrence'
import type { ReadyPoint, ReadyTopic } from '../2-ideas/ready'
import type { ReadyWording } from '../2-ideas/ready-idea'

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
  /** The assertion that each token is in, -1 for none. */
  private readonly assertionOf: Int32Array
  /** For each point the places of its term. */
  readonly places: readonly (readonly Hit[])[]
  /** For each point the keys of its term. */
  private readonly termKeys: readonly ReadonlySet<string>[]

  constructor(
    private readonly page: ReadPage,
    private readonly topic: ReadyTopic,
    finder: Finder,
  ) {
    const byStatement = assertionsOf(page)
    this.assertions = byStatement.flat()
    this.assertionOf = new Int32Array(page.tokens.length).fill(-1)
    let count = 0
    byStatement.forEach((list, s) => {
      const { from, to } = page.statements[s]!
      list.forEach(({ subject }, k) =>
        this.assertionOf.fill(count + k, k === 0 ? from : subject.from, to),
      )
      count += list.length
    })
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
    return this.assertionOf[i]!
  }

  /** Is the assertion about another point's term, one that this point does not speak of itself, and not about this point's own? */
  private foreign(point: number, a: number): boolean {
    const owners = this.owners[a]
    if (!owners || owners.size === 0 || owners.has(point)) return false
    // A point without a term of its own (a list, a method) can be spoken of under any subject.
    if (this.termKeys[point]!.size === 0) return false
    const { weights } = this.topic.points[point]!
    // `neap tide` is not `spring tide`, although both are tides.
    for (const owner of owners) {
      let apart = false
      for (const key of this.termKeys[owner]!) {
        if (this.termKeys[point]!.has(key)) continue
        if (weights.has(key)) return false
        apart = true
      }
      if (!apart) return false
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
    const first = this.at(o.at[0]!.from)
    if (o.at.every(({ from }) => this.at(from) === first)) return o
    const spread = [...new Set(o.at.map(({ from }) => this.at(from)))].sort((a, b) => a - b)
    const own = spread.slice(1).some((a) => {
      const { carries, subject } = this.assertions[a]!
      return !carries && PARTS.has(this.page.tokens[subject.from - 1]?.text ?? '')
    })
    return own ? { ...o, strength: o.strength * PARTED } : o
  }

  /** Tells whether any word of an occurrence stands in an assertion about something else than the point. */
  foreignTo(point: number): (o: Occurrence) => boolean {
    const known = new Map<number, boolean>()
    return ({ at }) =>
      at.some(({ from }) => {
        const a = this.at(from)
        if (a < 0 || this.owners[a]!.size === 0) return false
        let foreign = known.get(a)
        if (foreign === undefined) known.set(a, (foreign = this.foreign(point, a)))
        return foreign
      })
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
  return finder
    .hitsOf(first)
    .filter(
      (hit) =>
        hit.sign === 1 &&
        rest.every((unit) =>
          finder
            .hitsIn(unit, page.statementOf[hit.from]!)
            .some((other) => other.sign === 1 && Math.abs(other.from - hit.from) <= 3),
        ),
    )
}
