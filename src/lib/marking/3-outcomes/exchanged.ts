import type { Claim } from '../2-ideas/claims'
import type { Finder, Hit } from '../2-ideas/find'
import type { Occurrence } from '../2-ideas/occurrence'
import type { ReadyTopic } from '../2-ideas/ready'
import { swappedRoles } from './roles'
import type { Subjects } from './subjects'
import { SAID } from './thresholds'

type Pair = readonly [Hit, Hit]

/**
 * Rule 10: things in each other's roles turn a statement round, and a second time right (`Saturn is smaller than Jupiter`). An idea
 * that has both things turns; where each is an idea of its own, the one that tells their relation does, or else the later of the two.
 */
export class Roles {
  private readonly pairs = new Map<string, Pair | undefined>()

  constructor(
    private readonly topic: ReadyTopic,
    private readonly finder: Finder,
    private readonly subjects: Subjects,
  ) {}

  /** The claims of a point with what is told in swapped roles turned round. */
  inOrder(index: number, claims: readonly Claim[]): readonly Claim[] {
    const turning = new Set<Occurrence>()
    const pairs = new Map<number, readonly Found[]>()
    claims.forEach((claim, c) => {
      if (claim.kind !== 'idea') return
      for (const o of claim.occurrences) {
        const a = this.subjects.at(o.at[0]!.from)
        if (this.pairIn(index, a)) pairs.set(a, [...(pairs.get(a) ?? []), { c, o }])
      }
    })
    for (const [a, found] of pairs)
      for (const o of turnedIn(found, this.pairIn(index, a)!)) turning.add(o)
    if (turning.size === 0) return claims
    return claims.map((claim) => ({
      ...claim,
      occurrences: claim.occurrences.map((o) => (turning.has(o) ? turnedRound(o) : o)),
    }))
  }

  private pairIn(index: number, a: number): Pair | undefined {
    const assertion = this.subjects.assertions[a]
    if (!assertion) return undefined
    const id = `${index} ${a}`
    if (!this.pairs.has(id))
      this.pairs.set(
        id,
        swappedRoles(this.topic, this.topic.points[index]!, this.finder, assertion),
      )
    return this.pairs.get(id)
  }
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
  const { turned: _, ...rest } = o
  return o.sign === 1 || o.slots > 0
    ? { ...rest, sign: -1, turned: 'swapped' }
    : { ...rest, sign: 1 }
}

function covers({ at }: Occurrence, hit: Hit): boolean {
  return at.some(({ from, to }) => from <= hit.from && hit.to <= to)
}
