import { isStopWord } from '../lexicon'
import { byFirstWord } from '../words/first-words'
import type { Statement } from './statements'
import type { Token } from './tokens'

const MARKERS = byFirstWord([
  'no wait',
  'no sorry',
  'wait no',
  'no i mean',
  'i mean',
  'i meant',
  'i mean to say',
  'scrap that',
  'scratch that',
  'correction',
  'sorry',
  'oops',
  'or rather',
  'no actually',
  'actually no',
  'wait',
  'no hang on',
  'hang on',
  'that is wrong',
  "that's wrong",
  'my mistake',
  'edit',
  'ignore that',
  'cross that out',
])

/** How much of the clause before a correction is withdrawn for good: its last words, which the correction replaces. */
const WITHDRAWN_WORDS = 2

/**
 * What the student takes back: the clause before "no wait", "I mean", "scrap that", or what is struck out with ~~ ~~. `X, no, Y` takes
 * X back as well. 1: it cannot clash any more, but may still count ("the model came out in 1986, sorry, 1968" still names the
 * model). 2: it is withdrawn and counts for nothing.
 */
export function findCorrections(
  tokens: readonly Token[],
  words: readonly string[],
  statements: readonly Statement[],
  clauseOf: Int32Array,
): Uint8Array {
  const struck = new Uint8Array(tokens.length)
  strikeThrough(tokens, struck)
  for (const statement of statements) {
    for (let i = statement.from; i < statement.to; i += 1) {
      const length = markerAt(tokens, i, statement)
      if (length === 0) continue
      const first = i > statement.from ? statement : statements[statement.index - 1]
      if (first) strikeBefore(tokens, words, clauseOf, first.from, i, struck)
      i += length - 1
    }
  }
  return struck
}

/** Does the statement begin by taking back the one before it? */
export function opensWithCorrection(tokens: readonly Token[], statement: Statement): boolean {
  return markerAt(tokens, statement.from, statement) > 0
}

function strikeThrough(tokens: readonly Token[], struck: Uint8Array): void {
  let open = -1
  for (let i = 0; i < tokens.length; i += 1) {
    if (tokens[i]!.text !== '~~') continue
    if (open >= 0) struck.fill(2, open, i + 1)
    open = open >= 0 ? -1 : i
  }
}

// Back over punctuation, then over the clause that it belongs to.
function strikeBefore(
  tokens: readonly Token[],
  words: readonly string[],
  clauseOf: Int32Array,
  from: number,
  at: number,
  struck: Uint8Array,
): void {
  let end = at
  while (end > from && tokens[end - 1]!.kind !== 'word' && tokens[end - 1]!.kind !== 'number')
    end -= 1
  if (end === from) return
  const clause = clauseOf[end - 1]
  let withdrawn = 0
  for (let k = end - 1; k >= from && clauseOf[k] === clause; k -= 1) {
    struck[k] = withdrawn < WITHDRAWN_WORDS ? 2 : 1
    if (!isStopWord(words[k]!)) withdrawn += 1
  }
}

function markerAt(tokens: readonly Token[], i: number, { from, to }: Statement): number {
  const marker = MARKERS.get(tokens[i]!.text)?.find((m) =>
    m.every((word, k) => i + k < to && tokens[i + k]!.text === word),
  )
  if (marker) {
    // "wait" and "sorry" stand alone between commas or dashes; otherwise they are words like others (wait for an hour).
    const [before, after] = [tokens[i - 1], tokens[i + marker.length]]
    const alone =
      marker.length > 1 ||
      ((i === from || before?.kind === 'sign') &&
        (i + marker.length >= to || after?.kind === 'sign'))
    return alone ? marker.length : 0
  }
  const bare =
    tokens[i]!.text === 'no' && tokens[i - 1]?.kind === 'sign' && tokens[i + 1]?.text === ','
  return bare && i > from ? 1 : 0
}
