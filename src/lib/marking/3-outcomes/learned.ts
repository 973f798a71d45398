import { isNegation, isStopWord } from '../lexicon'
import { keyOfToken, wordsForMatching } from '../words/phrases'

/** An answer to one point that somebody marked: a statement that was given as credit, or refused. */
export interface MarkedAnswer {
  readonly text: string
  readonly credited: boolean
}

/** What a point has learnt from its marked answers; made once for each. */
export interface Learned {
  readonly credited: readonly Bag[]
  readonly refused: readonly Bag[]
}

interface Bag {
  readonly keys: ReadonlySet<string>
  readonly denies: boolean
}

export function learnedFrom(answers: readonly MarkedAnswer[]): Learned {
  const bags = (credited: boolean) =>
    answers
      .filter((answer) => answer.credited === credited)
      .map(({ text }) => bagOf(text))
      .filter(({ keys }) => keys.size > 0)
  return { credited: bags(true), refused: bags(false) }
}

/** How far one marked answer may move the balance of a point, in units of log-odds: set by calibration. */
export const LEARNT = 2
/** However many answers were marked, a point's own threshold moves no further than this. */
export const MOST_MOVED = 1

/**
 * What the marked answers say of a new one, in log-odds: up where it is like a credited one, down where it is like a refused one, and the
 * point's own threshold moved a little towards what its answers show, within `MOST_MOVED`.
 */
export function learnt(text: string, { credited, refused }: Learned): number {
  if (credited.length + refused.length === 0) return 0
  const bag = bagOf(text)
  const nearest = (bags: readonly Bag[]) => Math.max(0, ...bags.map((other) => alike(bag, other)))
  const share = (credited.length + 1) / (credited.length + refused.length + 2)
  const moved = Math.max(-MOST_MOVED, Math.min(MOST_MOVED, Math.log(share / (1 - share)) * 0.5))
  return LEARNT * (nearest(credited) - nearest(refused)) + moved
}

/** From this likeness on a statement is one that was marked before, in other words at most. */
export const SAME = 0.8

/** Was a statement like this one marked before? The nearest decides; as near to both, nothing does. */
export function markedBefore(text: string, { credited, refused }: Learned): boolean | undefined {
  const bag = bagOf(text)
  const nearest = (bags: readonly Bag[]) => Math.max(0, ...bags.map((other) => alike(bag, other)))
  const [yes, no] = [nearest(credited), nearest(refused)]
  if (Math.max(yes, no) < SAME || yes === no) return undefined
  return yes > no
}

function bagOf(text: string): Bag {
  const words = wordsForMatching(text)
  return {
    keys: new Set(
      words.filter(({ text: t, kind }) => kind !== 'word' || !isStopWord(t)).map(keyOfToken),
    ),
    denies: words.filter(({ text: t }) => isNegation(t)).length % 2 === 1,
  }
}

// Words in common, of the words of both (Dice); a denial on one side makes another answer.
function alike(one: Bag, two: Bag): number {
  const common = [...one.keys].filter((key) => two.keys.has(key)).length
  const dice = (2 * common) / Math.max(1, one.keys.size + two.keys.size)
  return one.denies === two.denies ? dice : dice * 0.5
}
