import type { Scalar } from 'yaml'

const ESCAPE_LENGTH: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 }
const SPACE = /\s/

/**
 * Offset in the file of character `at` of a scalar's text. YAML may have folded lines, doubled quotes or used
 * escapes between them, so the two are walked side by side; where they part, the last offset in step.
 */
export function offsetInSource(source: string, scalar: Scalar, text: string, at: number): number {
  const [start, end] = scalar.range ?? [0, 0]
  let from = contentStart(source, scalar.type, start)
  for (let i = 0; i < at && from < end;) {
    const step = stepAt(source, scalar.type, from)
    if (step.text === undefined || step.text === text[i]) {
      from += step.length
      // An escape may stand for a pair of code units.
      i += step.length === ESCAPE_LENGTH['U'] && text.codePointAt(i)! > 0xffff ? 2 : 1
    } else if (SPACE.test(source[from]!)) from += 1
    else if (SPACE.test(text[i]!)) i += 1
    else return from
  }
  while (from < end && SPACE.test(source[from]!) && !SPACE.test(text[at] ?? ' ')) from += 1
  return from
}

function contentStart(source: string, type: Scalar['type'], start: number): number {
  if (type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE') return start + 1
  // The text of a block scalar begins on the line after its | or >.
  return type === 'BLOCK_LITERAL' || type === 'BLOCK_FOLDED'
    ? source.indexOf('\n', start) + 1
    : start
}

function stepAt(
  source: string,
  type: Scalar['type'],
  from: number,
): { text?: string; length: number } {
  if (type === 'QUOTE_SINGLE' && source.startsWith("''", from)) return { text: "'", length: 2 }
  if (type !== 'QUOTE_DOUBLE' || source[from] !== '\\') return { text: source[from]!, length: 1 }
  const escape = source[from + 1] ?? ''
  return escape === '"' || escape === '\\'
    ? { text: escape, length: 2 }
    : { length: ESCAPE_LENGTH[escape] ?? 2 }
}
