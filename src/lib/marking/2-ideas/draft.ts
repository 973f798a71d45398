import { readIdea } from '../../syllabus/notation'
import type { Idea, Point, Topic } from '../../syllabus/types'
import { tokenise, type Token } from '../1-statements/tokens'
import { isDirectionWord, isFiller, isNegation, isStopWord } from '../lexicon'
import { keyOf } from '../words/keys'
import { isVerb } from '../words/verbs'

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

/**
 * Key ideas for a point whose author gave none, in the mark scheme's notation, so that they can be shown and edited:
 * the thing that is spoken of, then what each clause says of it, in the text's own words without its filler.
 */
export function draftIdeas(point: Point, topic: Topic): Idea[] {
  const given = new Set(tokenise(topic.title).map((t) => keyOf(t.text)))
  const drafted = chunksOf(point.text)
    .map((chunk) => written(chunk, given))
    .filter((idea, i, all) => idea !== '' && all.indexOf(idea) === i)
  if (drafted.length > 0) return drafted.map(readIdea)
  // Nothing but the title's words and filler: then those are the point.
  const words = tokenise(point.text).filter((t) => t.kind === 'word' || t.kind === 'number')
  return words.length === 0 ? [] : [readIdea(words.map((t) => t.text).join(' '))]
}

function chunksOf(text: string): Token[][] {
  const tokens = hyphenated(tokenise(text))
  const chunks: Token[][] = [[]]
  // Only the first clause gives up its subject: that is the thing the point is about.
  let verb = false
  const open = () => {
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
    if (BORDERS.has(token.text)) open()
    else if (token.text === 'and' && beginsClause(tokens, i)) open()
    else if (!verb && content > 0 && (COPULAS.has(token.text) || doesSomething(tokens, i))) {
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
  if (own.length === 0) return ''
  const kept = chunk.filter(
    (token) =>
      isNegation(token.text) ||
      isDirectionWord(token.text) ||
      (isContent(token) && (!given.has(keyOf(token.text)) || own.length < 2)),
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
