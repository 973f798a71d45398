import type { ReadPage } from '../1-statements/page'
import type { Statement } from '../1-statements/statements'
import type { ReadyWording } from '../2-ideas/ready-idea'
import { phraseKey, relatedTo } from '../words/relations'
import type { ClashFound } from './clash'
import type { Case } from './judge'
import { SAID } from './thresholds'

interface Place {
  /** Which of the two ideas the words are of. */
  readonly idea: 0 | 1
  /** What is spoken of, or what is said of it: the first or the last part of the idea. */
  readonly side: 0 | 1
  /** Its words, in order. */
  readonly at: readonly Range[]
  /** The last of them: where it stands among the others. */
  readonly from: number
}

interface Range {
  readonly from: number
  readonly to: number
}

/**
 * Rule 10 inside one point: two ideas of the same build (`pink + alkali`, `colourless + acid`) with their parts exchanged ("pink in
 * acid"). Parts belong together by their clause, then by their order: one after the other, or both things and then both answers
 * ("… and … are pink and colourless").
 */
export function crossedParts(open: Case, index: number): ClashFound | undefined {
  const point = open.topic.points[index]!
  const ideas = point.ideas.filter(({ kind, parts }) => kind === 'idea' && parts.length === 2)
  for (let i = 0; i < ideas.length; i += 1) {
    for (let k = i + 1; k < ideas.length; k += 1) {
      const pair = [ideas[i]!.parts, ideas[k]!.parts] as const
      if (shareAWord(pair[0][0]!, pair[1][0]!) || shareAWord(pair[0][1]!, pair[1][1]!)) continue
      for (const statement of statementsWithBoth(open, pair)) {
        const crossed = crossedIn(open, statement, pair)
        if (crossed)
          return {
            kind: 'swapped',
            statement: statement.index,
            at: crossed.flatMap(({ at }) => at).sort((a, b) => a.from - b.from),
            against: point.point.text,
          }
      }
    }
  }
  return undefined
}

// Only a statement with a thing and an answer can exchange them.
function statementsWithBoth(open: Case, [one, two]: readonly [Parts, Parts]): Statement[] {
  const [things, answers] = ([0, 1] as const).map(
    (side) =>
      new Set(
        [...one[side]!, ...two[side]!].flatMap((wording) => [...open.finder.statementsOf(wording)]),
      ),
  ) as [Set<number>, Set<number>]
  return [...things]
    .filter((s) => answers.has(s))
    .sort((a, b) => a - b)
    .map((s) => open.page.statements[s]!)
}

type Parts = readonly (readonly ReadyWording[])[]

function shareAWord(one: readonly ReadyWording[], two: readonly ReadyWording[]): boolean {
  const keys = new Set(one.flatMap(({ units }) => units.flatMap((unit) => unit.keys)))
  return two.some(({ units }) => units.some((unit) => unit.keys.some((key) => keys.has(key))))
}

// Two terms that were asked for by name, or opposites by the lexicon.
function excludes(one: readonly ReadyWording[], two: readonly ReadyWording[]): boolean {
  if (one.every((w) => w.exact) && two.every((w) => w.exact)) return true
  const other = new Set(two.flatMap(({ units }) => units.map((unit) => unit.phrase)))
  return one.some(({ units }) =>
    units.some((unit) =>
      relatedTo(unit.phrase).some(({ keys, sign }) => sign < 0 && other.has(phraseKey(keys))),
    ),
  )
}

function crossedIn(
  open: Case,
  statement: Statement,
  pair: readonly [Parts, Parts],
): readonly [Place, Place] | undefined {
  const places = ([0, 1] as const)
    .flatMap((idea) =>
      ([0, 1] as const).flatMap((side) =>
        placesOf(open, statement, pair[idea][side]!).map((at) => ({
          idea,
          side,
          at,
          from: at[at.length - 1]!.from,
        })),
      ),
    )
    .sort((a, b) => a.from - b.from)
  const distinct = places.filter(
    (one, i) => !places.some((two, k) => i !== k && overlap(one.at, two.at)),
  )
  if (distinct.length < 2 || distinct.length !== places.length) return undefined
  const told = pairs(distinct, open.page)
  const straight = told.some(([one, two]) => one.idea === two.idea)
  // Half of an exchange proves it only where the two things or the two answers exclude each other.
  if (
    distinct.length < 4 &&
    !excludes(pair[0][0]!, pair[1][0]!) &&
    !excludes(pair[0][1]!, pair[1][1]!)
  )
    return undefined
  return straight ? undefined : told.find(([one, two]) => one.idea !== two.idea)
}

function placesOf(
  open: Case,
  statement: Statement,
  wordings: readonly ReadyWording[],
): (readonly Range[])[] {
  const found = wordings.flatMap((wording) =>
    open.finder
      .wordingIn(wording, statement, SAID)
      .filter(
        (piece) =>
          piece.opposites === 0 &&
          !piece.denied &&
          !piece.denies &&
          piece.at.every(({ from }) => open.page.struck[from] === 0),
      )
      .map(({ at }) => at),
  )
  return found.filter((one, i) => found.findIndex((two) => overlap(one, two)) === i)
}

const overlap = (one: readonly Range[], two: readonly Range[]): boolean =>
  one.some((a) => two.some((b) => a.from < b.to && b.from < a.to))

/** Which part goes with which. Where neither the clauses nor the order say so, none. */
function pairs(places: readonly Place[], page: ReadPage): (readonly [Place, Place])[] {
  const clauses = new Map<number, Place[]>()
  for (const place of places) {
    const clause = page.clauseOf[place.from]!
    clauses.set(clause, [...(clauses.get(clause) ?? []), place])
  }
  if ([...clauses.values()].every((inOne) => inOne.length === 2))
    return [...clauses.values()].filter(mixed).map(asPair)
  if (places.length === 2) return [places].filter(mixed).map(asPair)
  if (places.length !== 4) return []
  const sides = places.map(({ side }) => side).join('')
  const [a, b, c, d] = places as [Place, Place, Place, Place]
  if (/^(?:01|10){2}$/.test(sides))
    return [
      [a, b],
      [c, d],
    ]
  return [
    [a, c],
    [b, d],
  ]
}

const mixed = (places: readonly Place[]): boolean => places[0]!.side !== places[1]!.side
const asPair = (places: readonly Place[]): readonly [Place, Place] => [places[0]!, places[1]!]
