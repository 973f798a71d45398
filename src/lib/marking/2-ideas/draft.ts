import { readIdea } from '../../syllabus/notation'
import type { Idea, Point, Topic, Value } from '../../syllabus/types'
import { tokenise, type Token } from '../1-statements/tokens'
import { isDirectionWord, isFiller, isNegation, isStopWord } from '../lexicon'
import { keyOf } from '../words/keys'
import { isVerb } from '../words/verbs'
import { draftEquation, type DraftedEquation } from './draft-equation'
import { stepTexts } from './draft-steps'
import { draftValue } from './draft-value'

/** Content words in one drafted idea, after which a preposition begins the next. */
const LONG = 3

const BORDERS = new Set(
  'that which who where when whereas while because since so but although if unless until whose than'.split(
    ' ',
  ),
)
const COPULAS = new Set('is are was were means be been has have can'.split(' '))
const PARTING = new Set(
  'in into from to at with by along across through over under behind on for without'.split(' '),
)

/** What marks a point whose author gave nothing but its text. */
export interface Draft {
  readonly ideas: readonly Idea[]
  /** How many of the ideas are asked for; absent: all. */
  readonly any?: number
  readonly steps?: readonly Idea[]
  readonly value?: Value
  readonly equation?: DraftedEquation
}

/**
 * A draft of everything that the text of a point asks for: the equation that it puts into words, the steps that it lists, the value that it
 * states, and the ideas of the rest. A value of the author's own stays.
 */
export function draftOf(point: Point, topic: Topic): Draft {
  const asked = ASKS.exec(point.text)?.groups
  // A list without its answers: nothing on the page can be held against it.
  if (asked) return listOf(asked.many!, asked.answers)
  const equation = draftEquation(point.text)
  if (equation) return { ideas: [], equation }
  const given = keysOf(topic.title)
  const steps = stepTexts(point.text).map((step) => {
    return readIdea(written(hyphenated(tokenise(step)), given) || plainWords(step))
  })
  if (steps.length > 0 && steps.every((step) => step.written !== '')) return { ideas: [], steps }
  const found = point.value ? undefined : draftValue(point.text)
  if (!found) return { ideas: draftIdeas(point, topic) }
  const { start, end } = found.at
  const rest = point.text.slice(0, start) + ' '.repeat(end - start) + point.text.slice(end)
  return { ideas: draftIdeas({ ...point, text: rest }, topic), value: found.value }
}

const ASKS =
  /^(?:give|name|state|list|describe|identify|suggest|outline)\s+(?:any\s+)?(?<many>one|two|three|four|five|six|[1-9])\b[^:]*(?::\s*(?<answers>.+?)\.?)?$/is
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six']

// `Name two fixed costs: rent, insurance or a licence fee`: any two of the answers.
function listOf(many: string, answers: string | undefined): Draft {
  const ideas = (answers ?? '')
    .split(/\s*[,;]\s*(?:(?:or|and)\s+)?|\s+(?:or|and)\s+/)
    .map(plainWords)
    .filter(Boolean)
    .map((answer) => readIdea(answer))
  const any = COUNTS.indexOf(many.toLowerCase()) + 1 || Number(many)
  return ideas.length >= any ? { ideas, any } : { ideas: [] }
}

const keysOf = (text: string) => new Set(tokenise(text).map((t) => keyOf(t.text)))
const plainWords = (text: string): string =>
  tokenise(text)
    .filter((t) => t.kind === 'word' && !/^(?:an?|the|on|its|their)$/.test(t.text))
    .map((t) => t.text)
    .join(' ')

/**
 * Key ideas for a point whose author gave none, in the mark scheme's notation, so that they can be shown and edited:
 * the thing that is spoken of, then what each clause says of it, in the text's own words without its filler.
 */
export function draftIdeas(point: Point, topic: Topic): Idea[] {
  const given = keysOf(topic.title)
  const drafted = hyphenatedSentences(point.text)
    .flatMap(
      (clause) => contrasted(clause) ?? chunksOf(clause).map((chunk) => written(chunk, given)),
    )
    .filter((idea, i, all) => idea !== '' && all.indexOf(idea) === i)
  if (drafted.length > 0) return drafted.map(readIdea)
  // Nothing but the title's words and filler: then those are the point.
  const words = tokenise(point.text).filter((t) => t.kind === 'word' || t.kind === 'number')
  return words.length === 0 ? [] : [readIdea(words.map((t) => t.text).join(' '))]
}

// Each sentence is read by itself.
function hyphenatedSentences(text: string): Token[][] {
  const clauses: Token[][] = [[]]
  for (const token of hyphenated(tokenise(text))) {
    if (token.text === '.') clauses.push([])
    else clauses[clauses.length - 1]!.push(token)
  }
  return clauses.filter((clause) => clause.length > 0)
}

const HALVES = new Set(['and', 'whereas', 'while', 'whilst', ';', 'but'])

/**
 * Two things, each with what is said of it: one idea for each, so that neither is said without the other; `undefined` for any other
 * clause.
 */
function contrasted(clause: readonly Token[]): string[] | undefined {
  for (const [i, token] of clause.entries()) {
    if (!HALVES.has(token.text)) continue
    const [left, right] = [clause.slice(0, i), clause.slice(i + 1)]
    const ideas =
      bySameLink(left, right) ?? (token.text === 'and' ? undefined : byVerbs(left, right))
    if (ideas) return ideas
  }
  return undefined
}

// `pink in alkali and colourless in acid`, `… by sound and … by meaning`: the same preposition in both halves.
function bySameLink(left: readonly Token[], right: readonly Token[]): string[] | undefined {
  const k = right.findIndex((t) => LINKS.has(t.text))
  if (k < 1) return undefined
  const j = left.map((t) => t.text).lastIndexOf(right[k]!.text)
  if (j < 1) return undefined
  const copula = left
    .slice(0, j)
    .map((t) => COPULAS.has(t.text) || isVerb(t.text))
    .lastIndexOf(true)
  const subject = contentOf(left.slice(0, Math.max(0, copula)))
  const things = contentOf(left.slice(copula + 1, j))
  const own = things.length > 0 && copula > 0
  const ideas = plus(
    own || copula <= 0 ? things : subject,
    left.slice(j + 1),
    right.slice(0, k),
    right.slice(k + 1),
  )
  return ideas && [...(own && subject.length > 0 ? [subject.join(' ')] : []), ...ideas]
}

// `A larger amplitude makes it louder; a higher frequency gives a higher pitch`: a verb in the midst of both halves.
function byVerbs(left: readonly Token[], right: readonly Token[]): string[] | undefined {
  const [j, k] = [left, right].map((half) =>
    half.findIndex(
      (t, i) => (COPULAS.has(t.text) || isVerb(t.text)) && contentOf(half.slice(0, i)).length > 0,
    ),
  ) as [number, number]
  if (j < 1 || k < 1) return undefined
  return plus(contentOf(left.slice(0, j)), left.slice(j + 1), right.slice(0, k), right.slice(k + 1))
}

function plus(
  thing: readonly string[],
  said: readonly Token[],
  otherThing: readonly Token[],
  otherSaid: readonly Token[],
): string[] | undefined {
  const parts = [thing, contentOf(said), contentOf(otherThing), contentOf(otherSaid)]
  if (parts.some((words) => words.length === 0 || words.length > LONG + 1)) return undefined
  const [a, b, c, d] = parts.map((words) => words.join(' '))
  return [`${a} + ${b}`, `${c} + ${d}`]
}
const LINKS = new Set('in by for at of from to with'.split(' '))

const contentOf = (tokens: readonly Token[]): string[] =>
  tokens.filter((t) => isContent(t) || isDegree(t.text)).map((t) => t.text)
const isDegree = (word: string) =>
  !isFiller(word) && (isDirectionWord(word) ? GOES.has(word) : isNegation(word))

function chunksOf(tokens: readonly Token[]): Token[][] {
  const chunks: Token[][] = [[]]
  // Only the first clause gives up its subject: that is the thing the point is about.
  let verb = false
  const open = () => {
    // `cannot travel`: what only denies goes with what it denies.
    if (!chunks[chunks.length - 1]!.some(isContent)) return
    chunks.push([])
    verb = true
  }
  for (const [i, token] of tokens.entries()) {
    if (token.kind === 'sign' || token.kind === 'break') {
      if (!/^[-'%"’]$/.test(token.text)) open()
      continue
    }
    const content = chunks[chunks.length - 1]!.filter(isContent).length
    if (BORDERS.has(token.text) || token.text === 'without') open()
    else if (token.text === 'and' && beginsClause(tokens, i)) open()
    else if (!verb && content > 0 && opensSaying(tokens, i)) {
      open()
    } else if (content >= LONG && PARTING.has(token.text)) open()
    chunks[chunks.length - 1]!.push(token)
  }
  return chunks
}

// `short-term` stays one word.
function hyphenated(tokens: readonly Token[]): Token[] {
  const out: Token[] = []
  for (const token of tokens) {
    const before = out[out.length - 1]
    const joins = before && !token.apart && (token.text === '-' || before.text.endsWith('-'))
    if (joins && before.kind === 'word' && (token.kind === 'word' || token.text === '-')) {
      out[out.length - 1] = { ...before, text: before.text + token.text, end: token.end }
    } else out.push(token)
  }
  return out
}

const opensSaying = (tokens: readonly Token[], i: number): boolean =>
  COPULAS.has(tokens[i]!.text) || isNegation(tokens[i]!.text) || doesSomething(tokens, i)

function doesSomething(tokens: readonly Token[], i: number): boolean {
  const next = tokens[i + 1]
  return (
    isVerb(tokens[i]!.text) && next?.kind === 'word' && !isStopWord(tokens[i - 1]?.text ?? 'the')
  )
}

// `and cuts off a lagoon`, `and the mean is taken`: a verb follows soon.
function beginsClause(tokens: readonly Token[], i: number): boolean {
  for (let k = i + 1; k < Math.min(tokens.length, i + 6); k += 1) {
    const token = tokens[k]!
    if (token.kind !== 'word') return false
    if (isVerb(token.text)) return true
  }
  return false
}

function isContent(token: Token): boolean {
  return (
    token.kind === 'number' ||
    (token.kind === 'word' &&
      !isStopWord(token.text) &&
      !isFiller(token.text) &&
      !isDirectionWord(token.text) &&
      !BORDERS.has(token.text) &&
      !isNegation(token.text))
  )
}

function written(chunk: readonly Token[], given: ReadonlySet<string>): string {
  const own = chunk.filter((token) => isContent(token) && !given.has(keyOf(token.text)))
  // `and is not used up in it`: what is denied is the point, however plain its words.
  const denial = chunk.findIndex((token) => isNegation(token.text))
  if (own.length === 0 && denial >= 0)
    return chunk
      .slice(denial, denial + 3)
      .filter((token) => token.kind === 'word' && !PARTING.has(token.text))
      .map((token) => token.text)
      .join(' ')
  if (own.length === 0) return ''
  // `quantity demanded` is one thing, although the title gives `demand` away.
  const besideOwn = (i: number) => own.includes(chunk[i - 1]!) || own.includes(chunk[i + 1]!)
  const kept = chunk.filter(
    (token, i) =>
      isNegation(token.text) ||
      isDirectionWord(token.text) ||
      (isContent(token) && (!given.has(keyOf(token.text)) || own.length < 2 || besideOwn(i))),
  )
  while (
    kept.length > 1 &&
    isBinder(kept[kept.length - 1]!) &&
    !GOES.has(kept[kept.length - 1]!.text)
  )
    kept.pop()
  while (kept.length > 1 && isBinder(kept[0]!) && !GOES.has(kept[0]!.text)) kept.shift()
  const alternatives = alternativesIn(chunk)
  const words = kept.map((token) => token.text)
  if (!alternatives) return words.join(' ')
  const [one, two] = alternatives
  return [words.filter((w) => w !== one && w !== two).join(' '), `${one} / ${two}`]
    .filter(Boolean)
    .join(' + ')
}

const isBinder = (token: Token) => isDirectionWord(token.text)
/** Prepositions that carry meaning at the head of an idea. */
const GOES = new Set(
  'up down out away above below before after without behind under over inside outside beyond back off against between'.split(
    ' ',
  ),
)

function alternativesIn(chunk: readonly Token[]): readonly [string, string] | undefined {
  const i = chunk.findIndex((token) => token.text === 'or')
  const [one, two] = [chunk[i - 1], chunk[i + 1]]
  if (i < 1 || !one || !two || !isContent(one) || !isContent(two)) return undefined
  return [one.text, two.text]
}
