import type { Posting, ReadPage } from '../1-statements/page'
import { distance, type Piece } from './occurrence'
import type { Hit } from './places'
import type { ReadyWording, Unit } from './ready-idea'

/** A word with a direction belongs to what stands this near, in its own clause. */
const BINDS_WITHIN = 5
/** A preposition belongs to what stands this near. */
const NEAR = 3

/** How a wording is looked for: it depends on the syllabus only, and is made once. */
export interface Plan {
  readonly wording: ReadyWording
  /** The weight of all its units. */
  readonly total: number
  /** The units that the rest is looked for around: the heaviest that have no direction of their own, if there are any. */
  readonly anchors: readonly number[]
  /** First the things, then what has a direction: that belongs to the thing it stands beside in the wording. */
  readonly order: readonly number[]
  /** For a unit with a direction the things that it may belong to, the nearest first; undefined for every other. */
  readonly besides: readonly (readonly number[] | undefined)[]
  /** It is nothing but words with a direction. */
  readonly bound: boolean
}

/** The wording said around one place of one of its units, as much of it as stands in the statement; `local`: the hits of each unit there. */
export function around(
  plan: Plan,
  local: readonly (readonly Hit[])[],
  anchored: number,
  anchor: Hit,
  page: ReadPage,
): Piece | undefined {
  const { wording, order, besides } = plan
  const { units } = wording
  const heavy = wording.loose ? 0.6 : 1
  let got = units[anchored]!.weight * anchor.strength
  let content = units[anchored]!.weight >= heavy ? 1 : 0
  let directional = units[anchored]!.directional
  const chosen = [anchor]
  // `down` may stand for `smaller` beside a thing (price down), never by itself.
  if (units.length === 1) {
    if (anchor.near && !units[anchored]!.near) return undefined
    return pieceOf(plan, chosen, got, content, directional, page)
  }
  const placed = [anchored]
  for (const u of order) {
    if (u === anchored || local[u]!.length === 0) continue
    const unit = units[u]!
    const beside = besides[u]?.find((k) => placed.includes(k))
    const thing = beside === undefined ? anchor : chosen[placed.indexOf(beside)]!
    const hit = nearest(local[u]!, thing, unit, chosen, page)
    if (!hit || (hit.slot && local[u]!.some((other) => other.sign === 1))) continue
    // First letters and pronouns stand for several words, and are one.
    const another = chosen.every(({ from }) => from !== hit.from)
    placed.push(u)
    chosen.push(hit)
    got += unit.weight * hit.strength * (besides[u] ? 1 : closeness(hit, anchor, page))
    if (unit.weight >= heavy && another) content += 1
    directional ||= unit.directional
  }
  return pieceOf(plan, chosen, got, content, directional, page)
}

function pieceOf(
  { wording, total, bound }: Plan,
  hits: Hit[],
  got: number,
  content: number,
  directional: boolean,
  page: ReadPage,
): Piece {
  let [opposites, slots, denied] = [0, 0, false]
  for (const hit of hits) {
    denied ||= isNegated(hit, page)
    if (hit.sign === 1) continue
    opposites += 1
    if (hit.slot) slots += 1
  }
  return {
    strength: Math.min(1, got / total),
    opposites,
    slots,
    denied,
    denies: wording.negated,
    at: inOrder(hits),
    directional,
    bound,
    content,
  }
}

// They are few, and this is asked more often than anything else.
function inOrder(hits: Hit[]): readonly Hit[] {
  for (let i = 1; i < hits.length; i += 1) {
    const hit = hits[i]!
    let k = i
    for (; k > 0 && hits[k - 1]!.from > hit.from; k -= 1) hits[k] = hits[k - 1]!
    hits[k] = hit
  }
  return hits
}

function isNegated({ from, to }: Hit, { negated, negatedBy }: ReadPage): boolean {
  // `no colour` is all of what is meant: its own denial does not deny it.
  for (let k = from; k < to; k += 1)
    if (negated[k] && (negatedBy[k]! < from || negatedBy[k]! >= to)) return true
  return false
}

// The nearest place; a word with a direction binds to the nearest of its kind, whichever way that points.
function nearest(
  hits: readonly Hit[],
  anchor: Hit,
  unit: Unit,
  chosen: readonly Hit[],
  page: ReadPage,
): Hit | undefined {
  let best: Hit | undefined
  let cost = Infinity
  for (const hit of hits) {
    if (chosen.some((other) => overlaps(other, hit))) continue
    const far = distance(hit, anchor, page)
    if ((unit.near || hit.near || anchor.near) && far > NEAR) continue
    if (unit.directional && far > BINDS_WITHIN) continue
    const own = far + (unit.directional ? 0 : (1 - hit.strength) * 3)
    if (own < cost) {
      best = hit
      cost = own
    }
  }
  return best
}

function closeness(one: Posting, two: Posting, page: ReadPage): number {
  const far = distance(one, two, page)
  return far <= 6 ? 1 : far <= 12 ? 0.92 : far <= 20 ? 0.8 : 0.6
}

// Two words in one place are one word for two things, unless a pronoun stands there for both.
function overlaps(one: Hit, two: Hit): boolean {
  return one.from < two.to && two.from < one.to && !(one.carried && two.carried)
}

export function planOf(wording: ReadyWording): Plan {
  const known = plans.get(wording)
  if (known) return known
  const made = planned(wording)
  plans.set(wording, made)
  return made
}
const plans = new WeakMap<ReadyWording, Plan>()

const binds = (unit: Unit) => unit.directional || unit.near

function planned(wording: ReadyWording): Plan {
  const { units } = wording
  const indices = units.map((_, u) => u)
  const plain = indices.filter((u) => !binds(units[u]!))
  const pool = plain.length > 0 ? plain : indices
  const most = Math.max(...pool.map((u) => units[u]!.weight))
  return {
    wording,
    total: units.reduce((sum, { weight }) => sum + weight, 0),
    anchors: pool.filter((u) => wording.loose || units[u]!.weight === most),
    order: [...plain, ...indices.filter((u) => binds(units[u]!))],
    besides: indices.map((u) => (binds(units[u]!) ? thingsBeside(u, plain) : undefined)),
    bound: units.every((unit) => unit.directional),
  }
}

// The things that a word with a direction may belong to: the next in the wording, then the one before, then the rest.
function thingsBeside(u: number, things: readonly number[]): number[] {
  const far = (k: number) => (k > u ? k - u : u - k + 0.5)
  return [...things].sort((x, y) => far(x) - far(y))
}
