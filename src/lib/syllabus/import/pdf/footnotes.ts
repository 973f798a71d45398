/** Footnotes: the small figure in the text, and the note at the foot of the page that begins with the same one. */
import { baselines, segmentsOf } from './segments'
import type { PdfItem, PdfPage, Segment } from './types'

const SIGN = /^(?:\d{1,3}|[*†‡§]{1,3})$/

/** More of a page is text with figures in it, not notes. */
const MOST = 0.5

export interface Footnotes {
  /** The page without its notes, and without the figures that lead to them. */
  readonly page: PdfPage
  /** Each note as its printed lines, without its figure. */
  readonly notes: readonly (readonly Segment[])[]
}

/** A raised figure with no note of its own, as in m³, stays where it is. */
export function footnotesOf(page: PdfPage, isFurniture: (segment: Segment) => boolean): Footnotes {
  const none = { page, notes: [] }
  const lines = baselines(page.items).filter(
    (line) => !segmentsOf({ items: line, number: page.number }).every(isFurniture),
  )
  const led = new Map<string, PdfItem[]>()
  const starts: number[] = []
  lines.forEach((line, i) => {
    line.forEach((item, n) => {
      if (!isRaised(item, line)) return
      const sign = item.text.trim()
      if (n > 0) led.set(sign, [...(led.get(sign) ?? []), item])
      else if (line.length > 1 && led.has(sign)) starts.push(i)
    })
  })
  const [first] = starts
  if (first === undefined || lines.length - first > lines.length * MOST) return none
  const foot = lines.slice(first)
  // Beside one another stand columns: the notes of one of them cannot be told from the text of the other.
  if (foot.some((line) => segmentsOf({ items: line, number: page.number }).length > 1)) return none
  const notes = starts.map((from, n) =>
    lines
      .slice(from, starts[n + 1])
      .flatMap((line, i) =>
        segmentsOf({ items: i === 0 ? line.slice(1) : line, number: page.number }),
      ),
  )
  const signs = new Set(starts.map((i) => lines[i]![0]!.text.trim()))
  const gone = new Set([
    ...foot.flat(),
    ...[...led].flatMap(([sign, items]) => (signs.has(sign) ? items : [])),
  ])
  return { page: { ...page, items: page.items.filter((item) => !gone.has(item)) }, notes }
}

function isRaised(item: PdfItem, line: readonly PdfItem[]): boolean {
  if (!SIGN.test(item.text.trim())) return false
  const largest = line.reduce((best, one) => (one.size > best.size ? one : best))
  return item.size < largest.size * 0.85 && item.y < largest.y - largest.size * 0.1
}
