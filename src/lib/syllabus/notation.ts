import { NotationError } from './notation-error'
import { readTokens, type Token } from './tokens'
import type { Idea, Part, Wording, WordSlot } from './types'

/**
 * The notation of one idea, as written mark schemes share it (common practice across exam boards):
 * `/` between alternatives, `( )` around words or endings that are not needed, quotation marks around the exact term,
 * `+` between parts that are all needed; `+` binds weaker than `/`. When a `/` or `+` is part of a word: operators.ts.
 *
 * @throws NotationError where a bracket or quotation mark is left open, an alternative is empty or asks for nothing.
 */
export function readIdea(written: string): Idea {
  const parts = split(readTokens(written), '+', written.length).map((part) => ({
    wordings: alternatives(part.tokens, part.end),
  }))
  return { written, parts }
}

/**
 * Alternatives without parts, as the words for the symbol of an equation: `wave speed / speed`.
 * @throws NotationError as readIdea does, and where there is a `+`.
 */
export function readWordings(written: string): readonly Wording[] {
  const tokens = readTokens(written)
  const plus = tokens.find((token) => token.kind === '+')
  if (plus) {
    throw new NotationError(
      'A + cannot stand here: give the alternatives, with / between.',
      plus.start,
    )
  }
  return alternatives(tokens, written.length)
}

/**
 * One wording: `(at the) waterline`.
 * @throws NotationError as readIdea does, and where there is a `/` or `+`.
 */
export function readWording(written: string): Wording {
  const tokens = readTokens(written)
  const operator = tokens.find((token) => token.kind === '/' || token.kind === '+')
  if (operator) {
    throw new NotationError(`One wording was expected, with no ${operator.kind}.`, operator.start)
  }
  return wording(tokens, written.length)
}

/** The notation of an idea's parts; `readIdea` of it has the same parts. */
export function writeIdea(idea: { readonly parts: readonly Part[] }): string {
  return idea.parts.map((part) => writeWordings(part.wordings)).join(' + ')
}

/** The notation of alternatives; `readWordings` of it gives them back. */
export function writeWordings(wordings: readonly Wording[]): string {
  return wordings.map(writeWording).join(' / ')
}

interface Stretch {
  readonly tokens: readonly Token[]
  /** Offset where it ends, for a message that something is missing there. */
  readonly end: number
}

function split(tokens: readonly Token[], by: '/' | '+', end: number): Stretch[] {
  const stretches: Stretch[] = []
  let from = 0
  tokens.forEach((token, i) => {
    if (token.kind !== by) return
    stretches.push({ tokens: tokens.slice(from, i), end: token.start })
    from = i + 1
  })
  return [...stretches, { tokens: tokens.slice(from), end }]
}

function alternatives(tokens: readonly Token[], end: number): Wording[] {
  return split(tokens, '/', end).map((one) => wording(one.tokens, one.end))
}

function wording(tokens: readonly Token[], end: number): Wording {
  const first = tokens[0]
  if (!first) throw new NotationError('Nothing stands here: a word was expected.', end)
  const quoted = tokens.filter((token) => token.kind === 'quoted')
  const loose = tokens.find((token) => token.kind === 'word' && !token.optional)
  if (quoted.length > 0 && (quoted.length > 1 || loose)) {
    throw new NotationError(
      'Quotation marks hold one whole alternative; only words in brackets may stand beside them. ' +
        'Quote all of it, or join the parts with +.',
      (loose ?? quoted[1]!).start,
    )
  }
  if (quoted.length === 0 && !loose) {
    throw new NotationError(
      'Every word of this alternative is in brackets, so nothing is needed: leave a word outside.',
      first.start,
    )
  }
  return { words: tokens.flatMap(slots), exact: quoted.length > 0 }
}

function slots(token: Token): WordSlot[] {
  if (token.kind === 'quoted')
    return token.text.split(/\s+/).map((text) => ({ text, optional: false }))
  const slot = { text: token.text, optional: token.optional }
  return [token.suffix === undefined ? slot : { ...slot, suffix: token.suffix }]
}

function writeWording({ words, exact }: Wording): string {
  const written: string[] = []
  for (let i = 0; i < words.length;) {
    const { optional, suffix, text } = words[i]!
    let next = i + 1
    if (!optional && !exact) {
      written.push(suffix === undefined ? text : `${text}(${suffix})`)
    } else {
      while (next < words.length && words[next]!.optional === optional) next += 1
      const group = words
        .slice(i, next)
        .map((word) => word.text)
        .join(' ')
      written.push(optional ? `(${group})` : `"${group}"`)
    }
    i = next
  }
  return written.join(' ')
}
