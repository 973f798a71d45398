import type { Equation, Point, Topic } from '../../syllabus/types'
import { tokenise } from '../1-statements/tokens'
import { commonWords, fillerWords, isDirectionWord, isStopWord } from '../lexicon'
import { reactionIn, type Reaction } from '../quantities/chemistry'
import { readyEquation, type ReadyEquation } from '../quantities/equation-text'
import { readyValue, type ReadyValue } from '../quantities/value-text'
import { formulaNamed } from '../lexicon/formula'
import { keyOf } from '../words/keys'
import { keyOfToken, wordsForMatching } from '../words/phrases'
import { vocabularyOf, type Vocabulary } from '../words/spelling'
import { draftOf } from './draft'
import { loosened, readyIdea, readySentence, type ReadyIdea, type ReadyWording } from './ready-idea'
import { phrasesOf, wordsIn, wordsOf } from './topic-words'

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
