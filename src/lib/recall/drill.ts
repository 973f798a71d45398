/** The gap drill: the points to get back, in mixed order, until each was written in full. */
import type { Outcome } from '../marking/types'
import { decidedOutcomes } from './outcomes'
import type { Check } from './types'

/** The points left, the next one first. Empty: the drill is over. */
export type Pile = readonly string[]

/** The points of a check that are not full, in the syllabus's order: what a drill is made of. */
export const gapsOf = (check: Check): string[] =>
  decidedOutcomes(check)
    .filter(({ outcome }) => outcome !== 'full')
    .map(({ ref }) => ref)

/** The points in mixed order. `random` gives numbers from 0 up to, not including, 1. */
export function startPile(refs: readonly string[], random: () => number): Pile {
  const pile = [...refs]
  for (let last = pile.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1))
    ;[pile[last], pile[other]] = [pile[other] as string, pile[last] as string]
  }
  return pile
}

/** The pile once its first point was written: full leaves it, anything else goes to the end and comes round again. */
export function afterWriting([first, ...rest]: Pile, outcome: Outcome): Pile {
  return first === undefined || outcome === 'full' ? rest : [...rest, first]
}
