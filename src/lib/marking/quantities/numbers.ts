import { table } from '../words/table'
import type { Span } from '../types'

/** A number in a text, in figures or in words, with where it stands. */
export interface NumberRead extends Span {
  readonly number: number
  /** Written in words. */
  readonly words: boolean
}

const SUPER = '[⁻⁺]?[⁰¹²³⁴-⁹]+'
const FIGURES = new RegExp(
  // 3.0 × 10^8, 3e8, 1,025, -20, ½
  `(?<![\\p{L}\\d.])(?<lead>[-−]|minus\\s+)?(?<body>\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d{1,3}(?:[ \\u00a0\\u2009\\u202f]\\d{3})+(?![\\d])(?:\\.\\d+)?|\\d+(?:\\.\\d+)?|\\.\\d+|[½¼¾⅓⅔])` +
    `(?:\\s*(?:[×x*·⋅]|times)\\s*10\\s*(?:\\^\\s*(?<caret>[-−–+]?\\d+)|(?<super>${SUPER}))|[eE](?<exp>[-+]?\\d+)(?!\\p{L}))?` +
    `(?:\\s?(?<scale>thousand|million|billion|trillion|k(?=\\b)(?!\\s?\\p{L}))\\b)?`,
  'gu',
)
const VULGAR = table<number>({
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
})
const SUPERS = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const SCALES = table<number>({
  hundred: 1e2,
  thousand: 1e3,
  k: 1e3,
  million: 1e6,
  billion: 1e9,
  trillion: 1e12,
})
const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')

/** Every number of `text` in order; overlapping readings are not given twice. */
export function numbersIn(text: string): readonly NumberRead[] {
  const known = reads.get(text)
  if (known) return known
  const read = [...figuresIn(text), ...wordsIn(text)].sort((a, b) => a.start - b.start)
  // Every value point reads the same statements; the memory of them is bounded.
  if (reads.size > 2_000) reads.clear()
  reads.set(text, read)
  return read
}
const reads = new Map<string, readonly NumberRead[]>()

function figuresIn(text: string): NumberRead[] {
  if (!/[\d½¼¾⅓⅔]/.test(text)) return []
  return [...text.matchAll(FIGURES)].map((hit) => {
    const { lead, body = '', caret, super: raised, exp, scale } = hit.groups ?? {}
    let number = VULGAR[body] ?? Number(body.replace(/[,\s]/g, ''))
    if (caret ?? exp) number *= 10 ** Number((caret ?? exp)!.replace(/[−–]/, '-'))
    if (raised) number *= 10 ** superscript(raised)
    if (scale) number *= SCALES[scale.toLowerCase()] ?? 1
    return {
      number: lead ? -number : number,
      start: hit.index,
      end: hit.index + hit[0].length,
      words: false,
    }
  })
}

function superscript(raised: string): number {
  const digits = [...raised].map((c) => SUPERS.indexOf(c)).filter((d) => d >= 0)
  return Number(digits.join('')) * (raised.startsWith('⁻') ? -1 : 1)
}

const WORD = /\p{L}+/gu

// twenty thousand, three hundred and forty, seven, a thousand; `one` alone is too often a pronoun to
// be a number unless a unit or another number word follows, which the caller sees.
function wordsIn(text: string): NumberRead[] {
  const words = [...text.matchAll(WORD)].map((hit) => ({
    text: hit[0].toLowerCase(),
    start: hit.index,
    end: hit.index + hit[0].length,
  }))
  const found: NumberRead[] = []
  for (let i = 0; i < words.length;) {
    const read = opensNumber(words[i]!.text) ? numberWords(together(text, words, i), 0) : undefined
    if (!read) {
      i += 1
      continue
    }
    found.push({
      number: read.number,
      start: words[i]!.start,
      end: words[i + read.next - 1]!.end,
      words: true,
    })
    i += read.next
  }
  return found
}

const OPENING = new Set([...SMALL, ...TENS, 'a'])
const opensNumber = (word: string): boolean => OPENING.has(word)

// `four, three marks` is two numbers: words of one number have only space or a hyphen between them.
function together(
  text: string,
  words: readonly { text: string; start: number; end: number }[],
  from: number,
) {
  let to = from + 1
  while (
    to < words.length &&
    to - from < 12 &&
    /^[\s-]+$/.test(text.slice(words[to - 1]!.end, words[to]!.start))
  )
    to += 1
  return words.slice(from, to)
}

function numberWords(words: readonly { text: string }[], from: number) {
  let total = 0
  let group = 0
  let next = from
  let any = false
  while (next < words.length) {
    const word = words[next]!.text
    const small = SMALL.indexOf(word)
    const ten = TENS.indexOf(word)
    // Units follow tens or hundreds; `twenty two` is one number, `four three` is not.
    if (small >= 0 && group % (group % 100 >= 20 && small < 10 ? 10 : 100) === 0) group += small
    else if (ten >= 0 && group % 100 === 0) group += (ten + 2) * 10
    else if (word === 'hundred' && any) group *= 100
    else if (SCALES[word] !== undefined && word !== 'k' && any) {
      total += group * SCALES[word]
      group = 0
    } else if (word === 'a' && SCALES[words[next + 1]?.text ?? ''] && !any) group = 1
    else if (word === 'and' && any && isNumberWord(words[next + 1]?.text) && group >= 100) {
      next += 1
      continue
    } else if (word === 'point' && any) {
      return decimals(words, next, total + group)
    } else break
    any = true
    next += 1
  }
  return any ? { number: total + group, next } : undefined
}

function decimals(words: readonly { text: string }[], point: number, whole: number) {
  let digits = ''
  let next = point + 1
  while (
    next < words.length &&
    SMALL.indexOf(words[next]!.text) >= 0 &&
    SMALL.indexOf(words[next]!.text) < 10
  ) {
    digits += SMALL.indexOf(words[next]!.text)
    next += 1
  }
  return digits === ''
    ? { number: whole, next: point }
    : { number: whole + Number(`0.${digits}`), next }
}

function isNumberWord(word: string | undefined): boolean {
  return word !== undefined && (SMALL.includes(word) || TENS.includes(word))
}
