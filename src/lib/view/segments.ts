/** Cuts a page into segments, so that overlapping and nested spans can be drawn without nesting elements. */
import type { Span } from '../marking/types'

/** What a span of the page is to a point, or, for `beyond`, to none. */
export type Role =
  /** An idea of the point is said here. */
  | 'said'
  /** The statement that a clash stands in, and the words in it that clash. */
  | 'clash'
  | 'clash-words'
  /** The nearest statement to a point that is not said. */
  | 'nearest'
  /** On no point of the syllabus. */
  | 'beyond'

export interface Cover {
  readonly span: Span
  readonly role: Role
  /** The point; absent for `beyond`. */
  readonly ref?: string
}

/** A stretch of the page under the same covers from its first to its last character; never empty. */
export interface Segment extends Span {
  readonly text: string
  /** In the order in which they were given. */
  readonly covers: readonly Cover[]
}

/**
 * The segments of `text`, in order: their texts put together are `text`, character for character. They are as long as
 * the covers and the `cuts` (offsets at which something is to be put in) allow. Spans that reach beyond the text are
 * shortened to it, empty ones cover nothing: a damaged record still shows its page.
 */
export function segmentsOf(
  text: string,
  covers: readonly Cover[],
  cuts: readonly number[] = [],
): Segment[] {
  const within = (offset: number) => Math.min(Math.max(Math.trunc(offset) || 0, 0), text.length)
  const ranges = covers
    .map((cover, order) => ({
      cover,
      order,
      start: within(cover.span.start),
      end: within(cover.span.end),
    }))
    .filter(({ start, end }) => start < end)
    .sort((a, b) => a.start - b.start)
  const borders = new Set([0, text.length, ...cuts.map(within)])
  for (const { start, end } of ranges) borders.add(start).add(end)
  const offsets = [...borders].sort((a, b) => a - b)

  const segments: Segment[] = []
  let open: typeof ranges = []
  let next = 0
  for (const [i, start] of offsets.entries()) {
    const end = offsets[i + 1]
    if (end === undefined) break
    open = open.filter((range) => range.end > start)
    for (; next < ranges.length && ranges[next]!.start <= start; next++) open.push(ranges[next]!)
    const covering = [...open].sort((a, b) => a.order - b.order).map(({ cover }) => cover)
    segments.push({ start, end, text: text.slice(start, end), covers: covering })
  }
  return segments
}

/** The points that a segment is tied to (in one of `roles`, where they are given), each once, in the order of its covers. */
export const refsOf = ({ covers }: Segment, roles?: readonly Role[]): string[] => [
  ...new Set(
    covers.flatMap(({ ref, role }) =>
      ref === undefined || (roles && !roles.includes(role)) ? [] : [ref],
    ),
  ),
]

/** The roles that are drawn for good; the others show only while their point is looked at. */
export const DRAWN: readonly Role[] = ['said', 'clash-words']

export const hasRole = ({ covers }: Segment, role: Role): boolean =>
  covers.some((cover) => cover.role === role)
