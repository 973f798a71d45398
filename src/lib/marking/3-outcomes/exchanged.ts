import type { Claim } from '../2-ideas/claims'
import type { Finder, Hit } from '../2-ideas/find'
import type { Occurrence } from '../2-ideas/occurrence'
import type { ReadyPoint, ReadyTopic } from '../2-ideas/ready'
import { swappedRoles, thingsIn } from './roles'
import type { Subjects } from './subjects'
import { SAID } from './thresholds'

type Pair = readonly [Hit, Hit]

/**
 * Rule 10: things in each other's roles turn a statement round, and a second time right (`Saturn is smaller than Jupiter`). An idea
 * that has both things turns; where each is an idea of its own, the one that tells their relation does, or else the later of the two.
 */
export class Roles {
  constructor(
    private readonly topic: ReadyTopic,
    private readonly finder: Finder,
    private readonly subjects: Subjects,
  ) {}

  /** The claims of a point with what is told in swapped roles turned round. */
  inOrder(index: number, claims: readonly Claim[]): readonly Claim[] {
    const point = this.topic.points[index]!
    const said = claims.some(({ kind, occurrences }) => kind === 'idea' && occurrences.length > 0)
    const things = said ? thingsIn(this.topic, point, this.finder) : undefined
    if (!things) return claims
    const told = new Map<number, Told>()
    claims.forEach((claim, c) => {
      if (claim.kind !== 'idea') return
      for (const o of claim.occurrences) {
        if (things[o.statement]! < 2) continue
        const a = this.subjects.at(o.at[0]!.from)
        let there = told.get(a)
        if (!there) told.set(a, (there = { pair: this.pairIn(point, a), found: [] }))
        if (there.pair) there.found.push({ c, o })
      }
    })
    const turning = new Set<Occurrence>()
    for (const { pair, found } of told.values())
      if (pair) for (const o of turnedIn(found, pair)) turning.add(o)
    if (turning.size === 0) return claims
    return claims.map((claim) => ({
      ...claim,
      occurrences: claim.occurrences.map((o) => (turning.has(o) ? turnedRound(o) : o)),
    }))
  }

  private pairIn(point: ReadyPoint, a: number): Pair | undefined {
    const assertion = this.subjects.assertions[a]
    return assertion && swappedRoles(this.topic, point, this.finder, assertion)
  }
}

/** What a point's ideas say in one assertion, and the things that are exchanged there, if any are. */
interface Told {
  readonly pair: Pair | undefined
  readonly found: Found[]
}

interface Found {
  /** Which claim. */
  readonly c: number
  readonly o: Occurrence
}

function turnedIn(found: readonly Found[], [one, two]: Pair): readonly Occurrence[] {
  const both = found.filter(({ o }) => covers(o, one) && covers(o, two))
  if (both.length > 0) return both.map(({ o }) => o)
  const tells = found.find(({ o }) => o.directional && o.strength >= SAID)
  const bearer = tells ?? found.find(({ o }) => covers(o, two))
  return found.filter(({ c }) => c === bearer?.c).map(({ o }) => o)
}

// What stands there in the place of another thing (`server` for `client`) is the same exchange and not a second one.
function turnedRound(o: Occurrence): Occurrence {
  return o.sign === 1 || o.slots > 0
    ? { ...o, sign: -1, turned: 'swapped' }
    : { ...o, sign: 1, turned: undefined }
}

function covers({ at }: Occurrence, hit: Hit): boolean {
  return at.some(({ from, to }) => from <= hit.from && hit.to <= to)
}
