/** What is printed on every page and says nothing of it: running heads, feet, page numbers. */
import type { PdfPage, Segment } from './types'

/** The outer part of a page, above and below, in which they stand. */
const EDGE = 0.12
const PAGE_NUMBER =
  /^(?:(?:page|p\.?)\s*)?[-–—]?\s*(?:\d{1,4}|[ivxlc]{1,7})\s*[-–—]?(?:\s*(?:of|\/)\s*\d{1,4})?$/i

export interface Furniture {
  readonly isFurniture: (segment: Segment) => boolean
  /** The texts that come again and again, for telling the user. */
  readonly heads: readonly string[]
}

export function furnitureOf(
  pages: readonly { readonly page: PdfPage; readonly segments: readonly Segment[] }[],
): Furniture {
  const heights = new Map(pages.map(({ page }) => [page.number, page.height]))
  const atEdge = ({ y, page, size }: Segment) => {
    const height = heights.get(page) ?? 0
    return y - size < height * EDGE || y > height * (1 - EDGE)
  }
  const body = bodySize(pages.flatMap(({ segments }) => segments))
  const seen = new Map<string, { pages: Set<number>; text: string }>()
  for (const { segments } of pages)
    for (const segment of segments.filter(atEdge))
      for (const name of namesOf(segment, body)) {
        const entry = seen.get(name) ?? { pages: new Set<number>(), text: segment.text }
        entry.pages.add(segment.page)
        seen.set(name, entry)
      }
  // Left and right pages may have heads of their own.
  const often = Math.max(2, pages.length * 0.3)
  const repeated = new Map([...seen].filter(([, entry]) => entry.pages.size >= often))
  const texts = new Set([...repeated.values()].map(({ text }) => text))
  return {
    isFurniture: (segment) =>
      atEdge(segment) &&
      (PAGE_NUMBER.test(segment.text) || namesOf(segment, body).some((name) => repeated.has(name))),
    heads: [...texts].filter((text) => !PAGE_NUMBER.test(text)),
  }
}

/**
 * The same words at the same height, with the same numbers or with numbers that go up with the pages. What is larger
 * than the body is a heading unless it is the same throughout: "1 Waves", "2 Tides" may each begin a page.
 */
function namesOf({ text, y, page, size }: Segment, body: number): string[] {
  const place = Math.round(y / 6)
  const words = text.toLowerCase()
  const counted = words.replace(/\d{1,5}/g, (digits) => `#${Number(digits) - page}`)
  return size > body * 1.12 || counted === words
    ? [`${place} ${words}`]
    : [`${place} ${words}`, `${place} ${counted}`]
}

function bodySize(segments: readonly Segment[]): number {
  const letters = new Map<number, number>()
  for (const { size, text } of segments) letters.set(size, (letters.get(size) ?? 0) + text.length)
  return [...letters].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0
}
