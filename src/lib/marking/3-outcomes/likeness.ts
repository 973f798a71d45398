import type { ReadPage } from '../1-statements/page'
import type { ReadyPoint } from '../2-ideas/ready'
import { isFiller, isNegation, isStopWord } from '../lexicon'
import { keyOfToken, wordsForMatching } from '../words/phrases'
import { GAP, relatedTo } from '../words/relations'
import { cosine, longestInOrder, trigramsOf, type Trigrams } from './strings'

/**
 * How like a stretch of a page is to the text of a point: readable features for the model that turns them into a probability
 * (`calibration.ts`). They never give credit by themselves.
 */
export const FEATURES = [
  'share of the text that is said, by weight, related words included',
  'share of the text that stands as its opposite',
  'a denial on one side only (0 or 1)',
  'share of the drafted ideas that are said, by weight',
  'share of the words of the text that are said',
  'share of the words of the page that the text has',
  'the share said, small words included',
  'the share of the page, small words included',
  'share of the words said that the question did not give',
  'the text has no word that the question did not give (0 or 1)',
  'share of the words of the page that the text has, related words included',
  'share of the words said that the question did not give, related words included',
  'likeness letter by letter (cosine of trigrams) to the text',
  'longest run of words in the order of the text, as a share of it',
  'words of the page (logarithm)',
  'words of the text (logarithm)',
  'likeness letter by letter to the question',
] as const

/** The words of the question count for little, not for nothing. */
const GIVEN = 0.25

interface Likened {
  readonly words: readonly string[]
  readonly content: ReadonlyMap<string, number>
  readonly all: ReadonlySet<string>
  readonly denies: boolean
  readonly trigrams: Trigrams
}

const ready = new WeakMap<ReadyPoint, Likened>()

function likened(point: ReadyPoint, given: ReadonlySet<string>): Likened {
  const known = ready.get(point)
  if (known) return known
  const tokens = wordsForMatching(point.point.text)
  const content = new Map<string, number>()
  for (const token of tokens) {
    if (token.kind === 'word' && isStopWord(token.text)) continue
    const key = keyOfToken(token)
    content.set(key, (isFiller(token.text) ? 0.5 : 1) * (given.has(key) ? GIVEN : 1))
  }
  const words = tokens.map(keyOfToken)
  const made = {
    words,
    content,
    all: new Set(words),
    denies: tokens.filter(({ text }) => isNegation(text)).length % 2 === 1,
    trigrams: trigramsOf(point.point.text),
  }
  ready.set(point, made)
  return made
}

/** What the title gives away: its keys, and its letters. */
export interface Given {
  readonly keys: ReadonlySet<string>
  readonly trigrams: Trigrams
}

/** The features of the statements `from` to `to`, both included; `ideas`: the share of the drafted ideas that is said there. */
export function likeness(
  page: ReadPage,
  point: ReadyPoint,
  given: Given,
  [from, to]: readonly [number, number],
  ideas: number,
): number[] {
  const text = likened(point, given.keys)
  const said = stretch(page, from, to)
  const isNew = (key: string) => !given.keys.has(key)
  const near = (key: string, among: ReadonlySet<string>, sign: 1 | -1) =>
    relatedTo(key).some((o) => o.sign === sign && o.keys.every((k) => k === GAP || among.has(k)))

  let weight = 0
  let opposite = 0
  let whole = 0
  for (const [key, own] of text.content) {
    whole += own
    if (said.all.has(key)) weight += own
    else if (near(key, said.all, 1)) weight += own * 0.8
    else if (near(key, said.all, -1)) opposite += own
  }
  const asked = new Set(text.content.keys())
  const saidOrNear = (key: string) => said.content.has(key) || near(key, said.all, 1)
  const askedOrNear = (key: string) => asked.has(key) || near(key, asked, 1)
  const fresh = new Set([...asked].filter(isNew))
  const has = (set: ReadonlySet<string>) => (key: string) => set.has(key)
  return [
    weight / Math.max(0.001, whole),
    opposite / Math.max(0.001, whole),
    text.denies === said.denies ? 0 : 1,
    ideas,
    share(asked, has(said.content)),
    share(said.content, has(asked)),
    share(text.all, has(said.all)),
    share(said.all, has(text.all)),
    fresh.size === 0 ? 0.5 : share(fresh, has(said.content)),
    fresh.size === 0 ? 1 : 0,
    share(said.content, askedOrNear),
    fresh.size === 0 ? 0.5 : share(fresh, saidOrNear),
    cosine(said.trigrams, text.trigrams),
    longestInOrder(said.words, text.words) / Math.max(1, text.words.length),
    Math.log(1 + said.words.length),
    Math.log(1 + text.words.length),
    cosine(said.trigrams, given.trigrams),
  ]
}

interface Stretch {
  readonly words: readonly string[]
  readonly all: ReadonlySet<string>
  readonly content: ReadonlySet<string>
  readonly denies: boolean
  readonly trigrams: Trigrams
}

function stretch(page: ReadPage, from: number, to: number): Stretch {
  const words: string[] = []
  const content = new Set<string>()
  let denials = 0
  for (let s = from; s <= to && s < page.statements.length; s += 1) {
    const statement = page.statements[s]!
    for (let i = statement.from; i < statement.to; i += 1) {
      const token = page.tokens[i]!
      if (token.kind !== 'word' && token.kind !== 'number') continue
      const key = page.keys[i]!
      words.push(key)
      if (token.kind === 'number' || !isStopWord(token.text)) content.add(key)
      if (token.kind === 'word' && isNegation(token.text)) denials += 1
    }
  }
  const text = page.text.slice(page.statements[from]?.start, page.statements[to]?.end)
  return {
    words,
    all: new Set(words),
    content,
    denies: denials % 2 === 1,
    trigrams: trigramsOf(text),
  }
}

function share(keys: Iterable<string>, has: (key: string) => boolean): number {
  let size = 0
  let found = 0
  for (const key of keys) {
    size += 1
    if (has(key)) found += 1
  }
  return size === 0 ? 0 : found / size
}
