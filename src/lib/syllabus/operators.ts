/**
 * Whether a `/` or `+` in an idea parts it, or belongs to a word such as N/kg, and/or, Na⁺ or 2e-.
 * Spaces always make it plain; without them this file decides. Inside quotation marks nothing parts.
 *
 * `/` parts, unless it stands without spaces
 *   - before the symbol or the name of a unit of measurement: `N/kg`, `beats/minute`;
 *   - between figures, or between single letters: `1/2`, `I/O`;
 *   - in one of the fixed pairs below.
 * `+` parts where on both sides there is a space, an end, or a whole word of three letters or more:
 *   `paint + pebble`, `paint+pebble`. So the sign of an ion or a charge stays: `Na+`, `2e- + 2H+`, `+5 V`, `C++`.
 */
const FIXED_PAIRS: ReadonlySet<string> = new Set(['and/or', 'either/or', 'on/off', 'tcp/ip'])
// Common unit symbols, with the prefixes that schools use. BIPM, SI Brochure, 9th edition, tables 2, 4, 7 and 8.
const UNIT =
  /^(?:[kMGTdcmnµμ]?(?:m|g|s|l|L|N|J|W|V|A|C|K|Hz|Pa|mol|Ω|B|b)|°C|eV|t|ha|h|hr|min|d|yr|%|second|minute|hour|day|month|year)(?:\^?-?[23]|[²³])?$/
const FIGURES = /^[\d.,½¼¾]+$/
const LETTER = /^\p{L}$/u
const WORD = /^\p{L}?\p{Ll}{2,}$/u
// Uncased scripts have no small letters.
const UNCASED_WORD = /^\p{Lo}{2,}$/u
const SPACE = /\s/
const EDGE = /[\s()"“”/+]/
/** Longer neighbours are no unit, figure or pair; reading no further keeps one long word from costing its square. */
const NEIGHBOUR = 40

/** `text[at]` is `/` or `+`; true if it parts the idea there. */
export function isOperator(text: string, at: number): boolean {
  const left = wordBefore(text, at)
  const right = wordAfter(text, at + 1)
  return text[at] === '/' ? partsAlternatives(left, right) : partsIdea(text, at, left, right)
}

function partsAlternatives(left: string, right: string): boolean {
  if (left === '' || right === '') return true
  if (UNIT.test(right)) return false
  if (FIGURES.test(left) && FIGURES.test(right)) return false
  if (LETTER.test(left) && LETTER.test(right)) return false
  return !FIXED_PAIRS.has(`${left}/${right}`.toLowerCase())
}

function partsIdea(text: string, at: number, left: string, right: string): boolean {
  return isOpenSide(text[at - 1], left, ')"”/') && isOpenSide(text[at + 1], right, '("“/')
}

function isOpenSide(neighbour: string | undefined, word: string, marks: string): boolean {
  if (neighbour === undefined || SPACE.test(neighbour) || marks.includes(neighbour)) return true
  return WORD.test(word) || UNCASED_WORD.test(word)
}

function wordBefore(text: string, end: number): string {
  let start = end
  while (start > 0 && end - start < NEIGHBOUR && !EDGE.test(text[start - 1]!)) start -= 1
  return text.slice(start, end)
}

function wordAfter(text: string, start: number): string {
  let end = start
  while (end < text.length && end - start < NEIGHBOUR && !EDGE.test(text[end]!)) end += 1
  return text.slice(start, end)
}
