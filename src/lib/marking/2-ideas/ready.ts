import type { Equation, Idea, Part, Point, Topic, Wording } from '../../syllabus/types'
import { tokenise } from '../1-statements/tokens'
import {
  commonWords,
  fillerWords,
  isDirectionWord,
  isFiller,
  isNegation,
  isStopWord,
} from '../lexicon'
import { reactionIn, type Reaction } from '../quantities/chemistry'
import { readyEquation, type ReadyEquation } from '../quantities/equation-text'
import { readyValue, type ReadyValue } from '../quantities/value-text'
import { formulaNamed } from '../lexicon/formula'
import { keyOf } from '../words/keys'
import { keyOfToken, wordsForMatching } from '../words/phrases'
import { isDirectional, knownPhraseAt, phraseKey } from '../words/relations'
import { vocabularyOf, type Vocabulary } from '../words/spelling'
import { draftOf } from './draft'

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

export interface ReadyPoint {
  readonly point: Point
  readonly ideas: readonly ReadyIdea[]
  readonly drafted: boolean
  /** How many of the ideas are needed. */
  readonly need: number
  readonly rejects: readonly { readonly said: string; readonly wording: ReadyWording }[]
  readonly equation?: ReadyEquation
  readonly reaction?: Reaction & { readonly species: ReadonlySet<string> }
  readonly value?: ReadyValue
  /** Every content key of its text and ideas, weighted by how few points share it: 0 to 1. */
  readonly weights: ReadonlyMap<string, number>
  /** Content keys of its text, in order. */
  readonly textKeys: readonly string[]
}

export interface ReadyTopic {
  readonly topic: Topic
  readonly points: readonly ReadyPoint[]
  readonly vocabulary: Vocabulary
  /** Keys that the title gives away. */
  readonly titleKeys: ReadonlySet<string>
}

/** The points that have a key in their text or ideas, in their order. */
export function pointsWith(topic: ReadyTopic, key: string): readonly number[] {
  let byKey = pointsByKey.get(topic)
  if (!byKey) {
    byKey = new Map()
    for (const [index, { weights }] of topic.points.entries()) {
      for (const own of weights.keys()) {
        const points = byKey.get(own)
        if (points) points.push(index)
        else byKey.set(own, [index])
      }
    }
    pointsByKey.set(topic, byKey)
  }
  return byKey.get(key) ?? []
}
const pointsByKey = new WeakMap<ReadyTopic, Map<string, number[]>>()

const ready = new WeakMap<Topic, ReadyTopic>()

/** A topic made ready for marking; made once for each topic object. */
export function readyTopic(topic: Topic): ReadyTopic {
  const known = ready.get(topic)
  if (known) return known
  const made = makeReady(topic)
  ready.set(topic, made)
  return made
}

function makeReady(topic: Topic): ReadyTopic {
  const titleKeys = new Set(contentKeysOf(topic.title))
  const terms = new Set<string>()
  const points = topic.points.map((point) => {
    const drafted = point.ideas.length === 0 && !point.steps && !point.equation
    if (!drafted) return { point, drafted, ideas: point.ideas, equation: point.equation }
    const { equation, ideas, any, steps, value } = draftOf(point, topic)
    const algebra = equation && { ...equation, kind: 'algebraic' as const }
    const asked: Point = {
      ...point,
      ...(any ? { any } : {}),
      ...(steps ? { steps } : {}),
      ...(value ? { value } : {}),
      // What is shown is in words; what is compared has a sign for each quantity.
      ...(equation && algebra ? { equation: { ...algebra, written: equation.shown } } : {}),
    }
    return { point: asked, drafted, ideas, equation: algebra }
  })
  for (const { point, ideas } of points) for (const word of wordsOf(point, ideas)) terms.add(word)
  for (const word of wordsIn(topic.title)) terms.add(word)

  const shared = new Map<string, number>()
  const textKeys = points.map(({ point }) => contentKeysOf(point.text))
  const keySets = points.map(({ point, ideas }, i) => {
    const keys = new Set([
      ...textKeys[i]!,
      ...[...ideas, ...(point.steps ?? [])].flatMap((idea) => contentKeysOf(idea.written)),
    ])
    for (const key of keys) shared.set(key, (shared.get(key) ?? 0) + 1)
    return keys
  })
  const weightOf = (key: string) =>
    (isFillerKey(key) ? 0.25 : 1) *
    (Math.log((topic.points.length + 1) / shared.get(key)!) / Math.log(topic.points.length + 1))

  return {
    topic,
    titleKeys,
    vocabulary: vocabularyOf(
      terms,
      commonWords,
      phrasesOf(topic),
      topic.points.map(({ text }) => text),
    ),
    points: points.map(({ point, drafted, ideas, equation }, i) => ({
      point,
      drafted,
      ideas: [
        ...ideas.map((idea) =>
          drafted
            ? loosened(readyIdea(idea, 'idea', titleKeys), weightOf)
            : readyIdea(idea, 'idea', titleKeys),
        ),
        ...(point.steps ?? []).map((idea) =>
          drafted
            ? loosened(readyIdea(idea, 'step', titleKeys), weightOf)
            : readyIdea(idea, 'step', titleKeys),
        ),
      ],
      need: point.any ?? ideas.length + (point.steps?.length ?? 0),
      rejects: (point.reject ?? []).map((said) => ({ said, wording: readySentence(said) })),
      ...quantities(point, equation),
      weights: new Map([...keySets[i]!].map((key) => [key, Math.max(0.05, weightOf(key))])),
      textKeys: textKeys[i]!,
    })),
  }
}

function quantities(
  point: Point,
  equation: Equation | undefined,
): Pick<ReadyPoint, 'equation' | 'reaction' | 'value'> {
  const value = point.value ? { value: readyValue(point.value) } : {}
  if (!equation) return value
  const { written, kind } = equation
  if (kind === 'algebraic') {
    return { ...value, equation: readyEquation(equation, tokenise(written), written) }
  }
  const reaction = reactionIn(written, new Set(), formulaNamed)
  const species = new Set([...(reaction?.from.keys() ?? []), ...(reaction?.to.keys() ?? [])])
  return { ...value, ...(reaction ? { reaction: { ...reaction, species } } : {}) }
}

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

// In a drafted idea the words that few points share weigh most.
function loosened(idea: ReadyIdea, weightOf: (key: string) => number): ReadyIdea {
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

function readySentence(text: string): ReadyWording {
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

/** Content keys of a text, in order, with repeats. */
export function contentKeysOf(text: string): string[] {
  return wordsForMatching(text)
    .filter(
      (t) =>
        t.kind === 'number' ||
        (t.kind === 'word' && !isStopWord(t.text) && !isDirectionWord(t.text)),
    )
    .map(keyOfToken)
}

function isFillerKey(key: string): boolean {
  return fillerKeys.has(key)
}
const fillerKeys = new Set(
  fillerWords()
    .filter((word) => /^[a-z]{4,}$/.test(word))
    .map(keyOf),
)

// What a student may shorten to its first letters, and which words stand beside which.
function phrasesOf(topic: Topic): string[] {
  const wordings = topic.points.flatMap((point) =>
    [...point.ideas, ...(point.steps ?? [])].flatMap((idea) =>
      idea.parts.flatMap((part) =>
        part.wordings.map(({ words }) => words.map(({ text }) => text).join(' ')),
      ),
    ),
  )
  return [topic.title, ...wordings]
}

function* wordsOf(point: Point, ideas: readonly Idea[]): Generator<string> {
  yield* wordsIn(point.text)
  for (const idea of [...ideas, ...(point.steps ?? [])]) {
    for (const part of idea.parts) {
      for (const { words } of part.wordings) {
        for (const slot of words) {
          yield* wordsIn(slot.text)
          if (slot.suffix) yield* wordsIn(slot.text + slot.suffix)
        }
      }
    }
  }
  for (const said of point.reject ?? []) yield* wordsIn(said)
  for (const wordings of Object.values(point.equation?.where ?? {})) {
    for (const { words } of wordings) for (const slot of words) yield* wordsIn(slot.text)
  }
}

function wordsIn(text: string): readonly string[] {
  // Most wordings are a plain word.
  if (/^[a-z]+$/.test(text)) return [text]
  // A hyphenated word is a word of the topic, and so are its two halves.
  return [...tokenise(text), ...wordsForMatching(text)]
    .filter((token) => token.kind === 'word')
    .map((token) => token.text)
}
