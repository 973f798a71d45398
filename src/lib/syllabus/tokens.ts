import { NotationError } from './notation-error'
import { isOperator } from './operators'

/** One token of an idea's notation. Brackets are resolved: their words come out as optional, their endings as suffix. */
export interface Token {
  readonly kind: 'word' | 'quoted' | '/' | '+'
  readonly text: string
  readonly optional: boolean
  readonly suffix?: string
  /** UTF-16 offsets into the idea; the end excludes the suffix's bracket. */
  readonly start: number
  readonly end: number
}

const SPACES = /\s+/y
const WORD_END = /[\s()"“”]/
const AFTER_SUFFIX = /[,;:.!?]*/y
/** Dashes and stops between words carry no word. */
const NO_WORD = /^[-–—,;:.…]+$/

/** @throws NotationError where a bracket or quotation mark is left open or out of place. */
export function readTokens(text: string): Token[] {
  const tokens: Token[] = []
  let at = 0
  while (at < text.length) {
    const char = text[at]!
    if (skipped(SPACES, text, at) > at) at = skipped(SPACES, text, at)
    else if (char === '(') at = bracket(text, at, tokens)
    else if (char === ')') throw new NotationError('This bracket was never opened.', at)
    else if (char === '"' || char === '“') at = quoted(text, at, tokens)
    else if (char === '”') throw new NotationError('This quotation mark was never opened.', at)
    else if (isOperatorAt(text, at)) {
      tokens.push({ kind: char as '/' | '+', text: char, optional: false, start: at, end: at + 1 })
      at += 1
    } else at = word(text, at, tokens)
  }
  return tokens
}

const isOperatorAt = (text: string, at: number): boolean =>
  (text[at] === '/' || text[at] === '+') && isOperator(text, at)

function skipped(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at
  return at + (pattern.exec(text)?.[0].length ?? 0)
}

function word(text: string, start: number, tokens: Token[]): number {
  const end = wordEnd(text, start, text.length)
  const found = text.slice(start, end)
  if (!NO_WORD.test(found) || text[end] === '(') {
    tokens.push({ kind: 'word', text: found, optional: false, start, end })
  }
  return end
}

function wordEnd(text: string, start: number, limit: number): number {
  let end = start
  while (end < limit && !WORD_END.test(text[end]!) && !isOperatorAt(text, end)) end += 1
  return end
}

function quoted(text: string, start: number, tokens: Token[]): number {
  const end = text.indexOf(text[start] === '"' ? '"' : '”', start + 1)
  if (end === -1) throw new NotationError('This quotation mark is never closed.', start)
  const term = text.slice(start + 1, end).trim()
  if (term === '') throw new NotationError('Nothing stands between the quotation marks.', start)
  tokens.push({ kind: 'quoted', text: term, optional: false, start, end: end + 1 })
  return end + 1
}

function bracket(text: string, open: number, tokens: Token[]): number {
  const close = text.indexOf(')', open)
  const inner = text.indexOf('(', open + 1)
  if (close === -1) throw new NotationError('This bracket is never closed.', open)
  if (inner !== -1 && inner < close) {
    throw new NotationError('A bracket within a bracket: close the first one before this.', inner)
  }
  const words = bracketWords(text, open + 1, close)
  if (words.length === 0) throw new NotationError('Nothing stands between the brackets.', open)
  const before = tokens.at(-1)
  if (before?.kind === 'word' && !before.optional && before.end === open) {
    return suffix(text, close, words, tokens)
  }
  tokens.push(...words)
  const after = text[close + 1]
  if (after !== undefined && !/[\s(“",;:.!?]/.test(after) && !isOperatorAt(text, close + 1)) {
    throw new NotationError(
      'A bracket in front of part of a word: write both words out, with / between.',
      open,
    )
  }
  return skipped(AFTER_SUFFIX, text, close + 1)
}

function suffix(text: string, close: number, words: readonly Token[], tokens: Token[]): number {
  const [ending, second] = words
  if (second) {
    throw new NotationError(
      'A bracket that touches a word holds its ending: put a space before a bracket that holds words.',
      second.start,
    )
  }
  const end = skipped(AFTER_SUFFIX, text, close + 1)
  const next = text[end]
  if (next !== undefined && !/[\s("“]/.test(next) && !isOperatorAt(text, end)) {
    throw new NotationError(
      'A bracket inside a word: only the ending of a word can be in brackets. Write both words out, with / between.',
      end,
    )
  }
  tokens.push({ ...tokens.pop()!, suffix: ending!.text })
  return end
}

// Optional words need no alternatives of their own: whichever of `(sea / cliff) wall` is said, it may be left out.
function bracketWords(text: string, from: number, close: number): Token[] {
  const words: Token[] = []
  for (let at = from; at < close;) {
    if (skipped(SPACES, text, at) > at) at = skipped(SPACES, text, at)
    else if (/["“”]/.test(text[at]!)) {
      throw new NotationError(
        'Quotation marks inside brackets: what is optional cannot be exact.',
        at,
      )
    } else if (isOperatorAt(text, at)) {
      if (text[at] === '+') {
        throw new NotationError('A + inside brackets: what is optional cannot be needed.', at)
      }
      at += 1
    } else {
      const end = wordEnd(text, at, close)
      words.push({ kind: 'word', text: text.slice(at, end), optional: true, start: at, end })
      at = end
    }
  }
  return words
}
