import type { Idea, Part, Wording } from '../../syllabus/types'
import { isDirectionWord, isFiller, isNegation, isStopWord } from '../lexicon'
import { keyOfToken, wordsForMatching } from '../words/phrases'
import { isDirectional, knownPhraseAt, phraseKey } from '../words/relations'

/** One thing a wording needs: a word, or a phrase that the lexicon knows as a whole (`goes up`). */
export interface Unit {
  /** Its identity for look-ups, see `phraseKey`. */
  readonly phrase: string
  readonly keys: readonly string[]
  readonly weight: number
  /** `up` in `up the beach`: it counts only beside the other words. */
  readonly near: boolean
  /** Has an opposite that turns the statement round. */
  readonly directional: boolean
  readonly exact: boolean
}

export interface ReadyWording {
  readonly units: readonly Unit[]
  /** The wording itself denies: `not used up`, `no matter`. */
  readonly negated: boolean
  readonly exact: boolean
  /** Drafted, not an author's: less than all of it may do. */
  readonly loose: boolean
}

export interface ReadyIdea {
  readonly idea: Idea
  readonly kind: 'idea' | 'step'
  readonly parts: readonly (readonly ReadyWording[])[]
  /** All its words stand in the topic's title: no evidence by itself. */
  readonly given: boolean
  readonly loose: boolean
  /** How much it weighs among the ideas of a drafted point. */
  readonly weight: number
}

/** An author's idea, or a drafted one, made ready to be found. `titleKeys`: what the title gives away. */
export function readyIdea(
  idea: Idea,
  kind: ReadyIdea['kind'],
  titleKeys: ReadonlySet<string>,
): ReadyIdea {
  const needed = idea.parts.filter((part) => !isPreventing(part) || idea.parts.length === 1)
  const denies = needed.length < idea.parts.length
  const parts = needed.map((part: Part, p) =>
    part.wordings
      .map(readyWording)
      .filter((w) => w.units.length > 0)
      .map((w) => (denies && p === 0 ? { ...w, negated: !w.negated } : w)),
  )
  return {
    idea,
    kind,
    parts: parts.filter((part) => part.length > 0),
    loose: false,
    weight: 1,
    given: parts.every((part) =>
      part.every((w) => w.units.every((u) => u.keys.every((k) => titleKeys.has(k)))),
    ),
  }
}

/** In a drafted idea the words that few points share weigh most. */
export function loosened(idea: ReadyIdea, weightOf: (key: string) => number): ReadyIdea {
  const weighed = (unit: Unit): Unit => {
    const rarest = Math.max(...unit.keys.map((key) => weightOf(key)))
    return {
      ...unit,
      weight: unit.weight * (0.4 + 0.6 * (Number.isFinite(rarest) ? Math.max(0, rarest) : 1)),
    }
  }
  const parts = idea.parts.map((part) =>
    part.map((w) => ({ ...w, loose: true, units: w.units.map(weighed) })),
  )
  const weight = parts.reduce(
    (sum, part) => sum + Math.max(0, ...part.map((w) => w.units.reduce((s, u) => s + u.weight, 0))),
    0,
  )
  return { ...idea, loose: true, weight, parts }
}

// `stops / prevents + building walls` denies the rest of the idea, as `cannot build walls` does.
function isPreventing(part: Part): boolean {
  return part.wordings.every(
    ({ words, exact }) =>
      !exact &&
      words.length === 1 &&
      /^(?:stop|prevent|block|inhibit|hinder|avoid)/.test(words[0]!.text),
  )
}

function readyWording(wording: Wording): ReadyWording {
  const needed = wording.words.filter((slot) => !slot.optional).map((slot) => slot.text)
  const words = needed.length > 0 ? needed : wording.words.map((slot) => slot.text)
  return { ...unitsOf(words.join(' '), wording.exact), exact: wording.exact, loose: false }
}

/** A whole statement, such as one that a point rejects. */
export function readySentence(text: string): ReadyWording {
  return { ...unitsOf(text, false), exact: false, loose: false }
}

/** The units of a wording and whether it denies. Function words fall away unless nothing else is left. */
function unitsOf(text: string, exact: boolean): { units: Unit[]; negated: boolean } {
  const tokens = wordsForMatching(text)
  const keys = tokens.map(keyOfToken)
  const units: Unit[] = []
  const left: Unit[] = []
  let negated = false
  for (let i = 0; i < tokens.length;) {
    const phrase = exact ? undefined : knownPhraseAt(keys, i)
    if (phrase) {
      units.push(unit(phrase, 1, false, exact))
      i += phrase.length
      continue
    }
    const word = tokens[i]!.text
    if (!exact && isNegation(word) && tokens.length > 1) negated = !negated
    else if (!exact && isStopWord(word)) left.push(unit([keys[i]!], 1, false, exact))
    else if (!exact && isDirectionWord(word)) units.push(unit([keys[i]!], 0.5, true, exact))
    else units.push(unit([keys[i]!], !exact && isFiller(word) ? 0.5 : 1, false, exact))
    i += 1
  }
  return { units: units.length > 0 ? units : left, negated }
}

function unit(keys: readonly string[], weight: number, near: boolean, exact: boolean): Unit {
  const phrase = phraseKey(keys)
  return { phrase, keys, weight, near, exact, directional: !exact && isDirectional(phrase) }
}
