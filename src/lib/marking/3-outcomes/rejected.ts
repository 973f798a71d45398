import type { Finder, Hit } from '../2-ideas/find'
import type { Piece } from '../2-ideas/occurrence'
import type { ReadyPoint } from '../2-ideas/ready'
import type { ReadyWording, Unit } from '../2-ideas/ready-idea'
import type { ClashFound } from './clash'
import type { Case } from './judge'
import { rightText } from './roles'
import { CLASHES } from './thresholds'

/**
 * A statement of the point's `reject` list on the page. A rejected statement mostly has the words of the right one in another
 * arrangement, so the words alone prove nothing: every word that is the rejected statement's own must be there as itself; words that
 * it has the other way round than the right one must come that way round; and no word of the right one may stand in between
 * ("pink in alkali and colourless in acid" does not say "colourless in alkali").
 */
export function rejectedBy(open: Case, index: number): ClashFound | undefined {
  const point = open.topic.points[index]!
  for (const { wording } of point.rejects) {
    for (const s of open.finder.statementsSaying(wording, CLASHES)) {
      if (open.about.share(index, s) < 0.15) continue
      const statement = open.page.statements[s]!
      for (const piece of open.finder.wordingIn(wording, statement, CLASHES)) {
        if (piece.opposites > 0 || piece.denied !== piece.denies) continue
        if (piece.at.some(({ from }) => open.page.struck[from]! > 0 || open.bare[from])) continue
        if (!hasItsOwn(open, point, wording, piece)) continue
        if (!subjectFirst(open, wording, piece)) continue
        if (!turnedLikeIt(open, point, wording, piece)) continue
        if (rightWordBetween(open, point, wording, piece)) continue
        return {
          kind: 'rejected',
          statement: statement.index,
          at: piece.at,
          against: point.point.text,
        }
      }
    }
  }
  return undefined
}

function placeOf(finder: Finder, unit: Unit, piece: Piece): number | undefined {
  return finder.hitsOf(unit).find((h) => piece.at.some((a) => a.from === h.from && a.to === h.to))
    ?.from
}

// The words that the rejected statement has and the point has not are what is wrong with it.
function hasItsOwn(open: Case, point: ReadyPoint, wording: ReadyWording, piece: Piece): boolean {
  const right = rightText(open.topic, point)
  return wording.units
    .filter(
      (unit) =>
        (unit.weight >= 1 || unit.near) && !right.hitsOf(unit).some((hit) => hit.sign === 1),
    )
    .every((unit) => placeOf(open.finder, unit, piece) !== undefined)
}

const FEW_WORDS = 3

// What the rejected statement speaks of comes first in it, unless all of it is one assertion.
function subjectFirst(open: Case, wording: ReadyWording, piece: Piece): boolean {
  const assertions = new Set(piece.at.map(({ from }) => open.subjects.at(from)))
  if (assertions.size === 1) return true
  // A few words that stand in two assertions are not the rejected statement.
  if (wording.units.length <= FEW_WORDS) return false
  const things = wording.units.filter((unit) => !unit.directional && !unit.near)
  const [first, ...rest] = things
    .map((unit) => placeOf(open.finder, unit, piece))
    .filter((p) => p !== undefined)
  return first === undefined || rest.every((place) => place > first)
}

// Two words that the rejected statement has the other way round than the right text must stand its way round on the page.
function turnedLikeIt(open: Case, point: ReadyPoint, wording: ReadyWording, piece: Piece): boolean {
  const right = rightText(open.topic, point)
  // `… in proactive interference`: where it is so may stand anywhere.
  const place = wording.units.findIndex((unit) => unit.phrase === 'in')
  const placed = wording.units
    .filter((_, u) => place < 1 || u < place)
    .map((unit) => ({
      right: right.hitsOf(unit).filter((hit) => hit.sign === 1),
      said: placeOf(open.finder, unit, piece),
    }))
  for (let i = 0; i < placed.length; i += 1) {
    for (let k = i + 1; k < placed.length; k += 1) {
      const [one, two] = [placed[i]!, placed[k]!]
      if (one.said === undefined || two.said === undefined || one.said <= two.said) continue
      if (turned(right, one.right, two.right)) return false
    }
  }
  return true
}

// Does the right text have `two` before `one`, and nowhere in one clause the other way?
function turned({ page }: Finder, one: readonly Hit[], two: readonly Hit[]): boolean {
  const pairs = one.flatMap((a) =>
    two.map((b) => ({ a, b, together: page.clauseOf[a.from] === page.clauseOf[b.from] })),
  )
  const near = pairs.some((pair) => pair.together) ? pairs.filter((pair) => pair.together) : pairs
  return near.length > 0 && near.every(({ a, b }) => b.from < a.from)
}

function rightWordBetween(
  open: Case,
  point: ReadyPoint,
  wording: ReadyWording,
  piece: Piece,
): boolean {
  const first = piece.at[0]!.from
  const last = piece.at[piece.at.length - 1]!.to
  const own = new Set(wording.units.flatMap((unit) => unit.keys))
  const used = (from: number) => piece.at.some((a) => from >= a.from && from < a.to)
  for (const idea of point.ideas) {
    for (const unit of idea.parts.flat().flatMap((w) => w.units)) {
      if (unit.weight < 1 || unit.keys.some((key) => own.has(key))) continue
      if (
        open.finder
          .hitsOf(unit)
          .some((h) => h.sign === 1 && h.from > first && h.from < last && !used(h.from))
      )
        return true
    }
  }
  return false
}
