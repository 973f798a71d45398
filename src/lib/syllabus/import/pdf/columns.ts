/** The stretches of a page in the order in which they are read: down the first column, then down the second. */
import type { Line, Segment } from './types'

/** Fewer lines side by side are no columns. */
const LEAST = 4

export function inReadingOrder(segments: readonly Segment[]): Line[] {
  if (segments.length === 0) return []
  const left = Math.min(...segments.map(({ x0 }) => x0))
  const right = Math.max(...segments.map(({ x1 }) => x1))
  const gutter = gutterOf(segments, left, right)
  if (gutter === undefined) return segments.map((segment) => ({ ...segment, left, right }))
  const lines: Line[] = []
  let band: Segment[] = []
  const endBand = () => {
    const [one, other] = [
      band.filter(({ x0, x1 }) => x0 + x1 < gutter * 2),
      band.filter(({ x0, x1 }) => x0 + x1 >= gutter * 2),
    ]
    for (const column of [one, other]) {
      const [from, to] = [
        Math.min(...column.map(({ x0 }) => x0)),
        Math.max(...column.map(({ x1 }) => x1)),
      ]
      lines.push(...column.map((segment) => ({ ...segment, left: from, right: to })))
    }
    band = []
  }
  const spans = spanningHeadings(segments, gutter)
  // What crosses the gutter, such as a title, is read before what is below it.
  for (const segment of segments) {
    if (crosses(segment, gutter) || spans.has(segment)) {
      endBand()
      lines.push({ ...segment, left, right })
    } else band.push(segment)
  }
  endBand()
  return lines
}

/** A line that is a little too long for its column only reaches into the gap. */
const INTO = 12
const crosses = ({ x0, x1 }: Segment, at: number): boolean => x0 < at - INTO && x1 > at + INTO

/** Short headings over both columns: larger or bolder than the text, with nothing beside them in the other column. */
function spanningHeadings(segments: readonly Segment[], gutter: number): Set<Segment> {
  const [left, right] = [
    segments.filter(({ x0, x1 }) => x0 + x1 < gutter * 2),
    segments.filter(({ x0, x1 }) => x0 + x1 >= gutter * 2),
  ]
  const sizes = segments.map(({ size }) => size).sort((a, b) => a - b)
  const usual = sizes[Math.floor(sizes.length / 2)] ?? 0
  return new Set(
    left.filter((segment) => {
      const { y, size, bold } = segment
      if (size < usual * 1.12 && !bold) return false
      const below = left.find((other) => other.y > y + 1)
      const end = below ? below.y - below.size * 0.5 : Infinity
      return !right.some((other) => other.y > y - size * 1.4 && other.y < end)
    }),
  )
}

/** Where nearly nothing crosses and both sides have lines beside each other; undefined: one column. */
function gutterOf(segments: readonly Segment[], left: number, right: number): number | undefined {
  let best: { at: number; crossing: number; away: number } | undefined
  for (let at = left + (right - left) * 0.3; at <= left + (right - left) * 0.7; at += 2) {
    const beyond = segments.filter((segment) => !crosses(segment, at))
    const one = beyond.filter(({ x1 }) => x1 <= at + INTO)
    const other = beyond.filter(({ x0 }) => x0 >= at - INTO)
    const crossing = segments.length - beyond.length
    if (crossing > segments.length * 0.3 || Math.min(one.length, other.length) < LEAST) continue
    const [a, b] = [span(one), span(other)]
    const beside = Math.min(a.to, b.to) - Math.max(a.from, b.from)
    if (beside < Math.min(a.to - a.from, b.to - b.from) * 0.5) continue
    const away = Math.abs(at - (left + right) / 2)
    if (!best || crossing < best.crossing || (crossing === best.crossing && away < best.away))
      best = { at, crossing, away }
  }
  return best?.at
}

const span = (segments: readonly Segment[]) => ({
  from: Math.min(...segments.map(({ y }) => y)),
  to: Math.max(...segments.map(({ y }) => y)),
})
