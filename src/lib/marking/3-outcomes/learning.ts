import { tokenise } from '../1-statements/tokens'
import { isDirectionWord, isNegation, isStopWord } from '../lexicon'
import { rarityOf } from '../lexicon/rarity'
import { keyOfToken } from '../words/phrases'
import { LEARNING } from './learning-weights'

/** An answer to one point that somebody marked: given the point or refused it. */
export interface MarkedAnswer {
  readonly text: string
  readonly credited: boolean
  /** How sure the marker was of it by itself, 0 to 1. */
  readonly sureness: number
}

/** The point's own threshold moves by no more than this, in log odds: about from 0.5 to 0.12 or 0.88. */
export const SHIFT_BOUND = 2
/** Variance of the points' own thresholds, in log odds, before anything is known of one. */
const SPREAD = 1
/** As if so much likeness had been seen that says nothing. */
const UNKNOWN = 0.3

type Words = ReadonlyMap<string, number>

function wordsOf(text: string): Words {
  const words = new Map<string, number>()
  let denials = 0
  for (const token of tokenise(text)) {
    if (token.kind !== 'word' && token.kind !== 'number') continue
    if (isNegation(token.text)) denials += 1
    else {
      const key = keyOfToken(token)
      const weight = isDirectionWord(token.text)
        ? 0.5
        : isStopWord(token.text)
          ? 0.1
          : rarityOf(key)
      words.set(key, weight)
    }
  }
  if (denials % 2 === 1) words.set('not', 1)
  return words
}

/** How alike two texts are, 0 to 1: the cosine of their words, by how much each tells. */
export const alike = (one: string, two: string): number => cosine(wordsOf(one), wordsOf(two))

function cosine(one: Words, two: Words): number {
  let both = 0
  for (const [key, weight] of one) both += weight * (two.get(key) ?? 0)
  const size = (words: Words) => Math.sqrt([...words.values()].reduce((sum, w) => sum + w * w, 0))
  const whole = size(one) * size(two)
  return whole === 0 ? 0 : Math.min(1, both / whole)
}

const odds = (p: number) => {
  const inside = Math.min(1 - 1e-6, Math.max(1e-6, p))
  return Math.log(inside / (1 - inside))
}
const probability = (logOdds: number) => 1 / (1 + Math.exp(-logOdds))

/**
 * How far the point's own threshold moves for what was marked, in log odds, within ±`SHIFT_BOUND`: up where the marker refuses what is
 * credited. The most likely shift under a normal prior; 0 where nothing was marked.
 */
export function shiftOf(marked: readonly MarkedAnswer[]): number {
  let shift = 0
  for (let step = 0; step < 8; step += 1) {
    let slope = -shift / SPREAD
    let curve = 1 / SPREAD
    for (const { credited, sureness } of marked) {
      const p = probability(odds(sureness) + shift)
      slope += (credited ? 1 : 0) - p
      curve += p * (1 - p)
    }
    shift += slope / curve
  }
  return Math.max(-SHIFT_BOUND, Math.min(SHIFT_BOUND, shift))
}

/** What the marked answers say of another one, for `LEARNING`: the log odds, the shift, the likest on either side, and what the likest were marked above or below what was foretold. */
export function learningEvidence(
  text: string,
  sureness: number,
  marked: readonly MarkedAnswer[],
): readonly number[] {
  const words = wordsOf(text)
  let [credited, refused, gain, seen] = [0, 0, 0, 0]
  for (const one of marked) {
    const likeness = cosine(words, wordsOf(one.text))
    if (one.credited) credited = Math.max(credited, likeness)
    else refused = Math.max(refused, likeness)
    gain += likeness ** 3 * ((one.credited ? 1 : 0) - one.sureness)
    seen += likeness ** 3
  }
  return [odds(sureness), shiftOf(marked), credited ** 2, refused ** 2, gain / (seen + UNKNOWN)]
}

/**
 * The sureness of a point after what was marked of it before. Nothing marked leaves it as it is; the very words that were credited are
 * never less sure for it, and those refused never more.
 */
export function afterLearning(
  text: string,
  sureness: number,
  marked: readonly MarkedAnswer[],
): number {
  if (marked.length === 0) return sureness
  const learnt = probability(
    learningEvidence(text, sureness, marked).reduce(
      (sum, x, i) => sum + LEARNING.weights[i]! * x,
      LEARNING.bias,
    ),
  )
  const same = marked.filter((one) => alike(one.text, text) > 0.999)
  const yes = same.filter(({ credited }) => credited).length
  const no = same.length - yes
  return yes > no ? Math.max(sureness, learnt) : no > yes ? Math.min(sureness, learnt) : learnt
}
