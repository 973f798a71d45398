import type { ReadPage } from '../1-statements/page'
import type { Span } from '../types'

type Range = { readonly from: number; readonly to: number }

/** From the first to the last of token ranges, as one span of the dump. */
export function spanOf(page: ReadPage, at: readonly Range[]): Span {
  const first = Math.min(...at.map(({ from }) => from))
  const last = Math.max(...at.map(({ to }) => to))
  return { start: page.tokens[first]!.start, end: page.tokens[last - 1]!.end }
}

/** The spans of token ranges, those that touch or nearly touch made one. */
export function spansOf(page: ReadPage, at: readonly Range[]): Span[] {
  const spans: Span[] = []
  let before: Range | undefined
  for (const range of [...at].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const span = spanOf(page, [range])
    if (before && range.from <= before.to + 1) {
      const last = spans[spans.length - 1]!
      spans[spans.length - 1] = { start: last.start, end: Math.max(last.end, span.end) }
      before = { from: before.from, to: Math.max(before.to, range.to) }
    } else {
      spans.push(span)
      before = range
    }
  }
  return spans
}

/** The words of a span as typed, white space as single spaces. */
export function wordsAt(page: ReadPage, { start, end }: Span): string {
  return page.text.slice(start, end).replace(/\s+/g, ' ')
}
