import type { Occurrence } from '../2-ideas/find'
import type { ReadyPoint, ReadyWording, Unit } from '../2-ideas/ready'
import { takenBack, type ClashFound } from './clash'
import type { Case } from './judge'
import { CLASHES } from './thresholds'

/**
 * A statement of the point's `reject` list on the page. A rejected statement mostly has the words of the right one in another
 * arrangement, so the words alone prove nothing: they must come in the rejected order, with every word that is the rejected statement's
 * own, and with no word of the right one in between ("pink in alkali and colourless in acid" does not say "colourless in alkali").
 */
export function rejectedBy(open: Case, index: number): ClashFound | undefined {
  const point = open.topic.points[index]!
  for (const { wording } of point.rejects) {
    for (const statement of open.page.statements) {
      if (open.about.share(index, statement.index) < 0.15) continue
      for (const o of open.finder.wordingIn(wording, statement)) {
        if (o.sign !== 1 || o.strength < CLASHES || takenBack(open, o)) continue
        if (!inOrder(open, wording, o) || !hasItsOwn(open, point, wording, o)) continue
        if (rightWordBetween(open, point, wording, o)) continue
        return { kind: 'rejected', statement: o.statement, at: o.at, against: point.point.text }
      }
    }
  }
  return undefined
}

function unitAt(open: Case, unit: Unit, o: Occurrence): number | undefined {
  const hit = open.finder.hitsOf(unit).find((h) => o.at.some((a) => a.from === h.from && a.to === h.to))
  return hit?.from
}

function inOrder(open: Case, wording: ReadyWording, o: Occurrence): boolean {
  const places = wording.units.map((unit) => unitAt(open, unit, o)).filter((p): p is number => p !== undefined)
  let pairs = 0
  let straight = 0
  for (let i = 0; i < places.length; i += 1) {
    for (let k = i + 1; k < places.length; k += 1) {
      pairs += 1
      if (places[i]! <= places[k]!) straight += 1
    }
  }
  return pairs === 0 || straight / pairs >= 0.75
}

// The words that the rejected statement has and the point has not are what is wrong with it.
function hasItsOwn(open: Case, point: ReadyPoint, wording: ReadyWording, o: Occurrence): boolean {
  return wording.units
    .filter((unit) => unit.weight >= 1 && unit.keys.every((key) => !point.weights.has(key)))
    .every((unit) => unitAt(open, unit, o) !== undefined)
}

function rightWordBetween(open: Case, point: ReadyPoint, wording: ReadyWording, o: Occurrence): boolean {
  const first = o.at[0]!.from
  const last = o.at[o.at.length - 1]!.to
  const own = new Set(wording.units.flatMap((unit) => unit.keys))
  const used = new Set(o.at.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, i) => from + i)))
  for (const idea of point.ideas) {
    for (const unit of idea.parts.flat().flatMap((w) => w.units)) {
      if (unit.weight < 1 || unit.keys.some((key) => own.has(key))) continue
      const hit = open.finder.hitsOf(unit).find((h) => h.sign === 1 && h.from > first && h.from < last && !used.has(h.from))
      if (hit) return true
    }
  }
  return false
}
