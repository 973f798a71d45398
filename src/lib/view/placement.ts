/** Where each point stands beside the page: at the words that say it, or, where nothing does, between its neighbours. */
import type { PointMark, Span } from '../marking/types'
import type { Cover } from './segments'

export interface Place {
  /** The point's position in the syllabus's order. */
  readonly index: number
  /** The offset in the page at which the point is put in. */
  readonly at: number
}

/**
 * - `page`, for one column: each point right after the statement that it belongs to, so points follow the page.
 * - `syllabus`, for a margin: points keep the syllabus's order. As many as can stand level with the words that say
 *   them do; the others stand between their neighbours and are tied by their reference alone.
 * In both, points with no words of their own come between their neighbours in the syllabus's order.
 */
export type Arrangement = 'page' | 'syllabus'

/** Every point once, in the order in which they are put in; offsets never fall. `anchors` are in the syllabus's order. */
export function placePoints(
  text: string,
  anchors: readonly (Anchor | undefined)[],
  arrangement: Arrangement,
): Place[] {
  return arrangement === 'page' ? placeUnder(text, anchors) : placeBeside(text, anchors)
}

function placeUnder(text: string, anchors: readonly (Anchor | undefined)[]): Place[] {
  const first = anchors.find(isFirm)
  let under = first?.statement.start ?? text.length
  return anchors
    .map((anchor, index): Place => {
      const own = anchor && afterLine(text, anchor.statement.end)
      if (anchor && own !== undefined) {
        const next = anchors.slice(index + 1).find(isFirm)
        if (anchor.firm || !first) under = own
        else if (own >= under && own <= (next?.statement.start ?? own)) under = own
      }
      return { index, at: under }
    })
    .sort((a, b) => a.at - b.at || a.index - b.index)
}

function placeBeside(text: string, anchors: readonly (Anchor | undefined)[]): Place[] {
  const rising = keepRising(anchors.map((anchor) => (isFirm(anchor) ? anchor : undefined)))
  let least = 0
  let before: Anchor | undefined
  return rising.map((firm, index): Place => {
    const next = rising.slice(index + 1).find((later) => later !== undefined)
    const most = next?.words.start ?? text.length
    const wished = firm ? firm.words.start : wish(anchors[index], before, next, text.length)
    least = Math.min(Math.max(wished, least), most)
    before = firm ?? before
    return { index, at: least }
  })
}

/** Where a point that nothing says would best be put in: at the end of a statement. */
function wish(
  near: Anchor | undefined,
  before: Anchor | undefined,
  next: Anchor | undefined,
  end: number,
): number {
  const from = before?.statement.end ?? 0
  const to = next?.statement.start ?? end
  if (near && near.statement.end >= from && near.statement.end <= to) return near.statement.end
  if (before) return from <= (next?.words.start ?? end) ? from : to
  return to
}

const isFirm = (anchor: Anchor | undefined): anchor is Anchor => anchor?.firm === true

/** The statement that says most of a point, and the first words there that say it. */
export interface Anchor {
  readonly words: Span
  readonly statement: Span
  /** False where nothing is said, and this is only the nearest statement: the order of the points goes first. */
  readonly firm: boolean
}

/** Where a point belongs on the page; `undefined` for a point that nothing there comes near. */
export function anchorOf(
  point: PointMark,
  covers: readonly Cover[],
  statements: readonly Span[],
): Anchor | undefined {
  const own = covers.filter(({ ref, role }) => ref === point.ref && role !== 'clash')
  const anchors = new Map<Span, { anchor: Anchor; spans: number }>()
  for (const { span: words, role } of own) {
    const firm = role !== 'nearest' || point.offered
    const statement = statements.find(({ end }) => end >= words.end) ?? words
    const there = anchors.get(statement)
    if (there) there.spans += 1
    else anchors.set(statement, { anchor: { words, statement, firm }, spans: 1 })
  }
  let best: { anchor: Anchor; spans: number } | undefined
  for (const one of anchors.values()) if (!best || one.spans > best.spans) best = one
  return best?.anchor
}

/** A longest run of anchors that rise with the syllabus's order; the others are left out. */
function keepRising(anchors: readonly (Anchor | undefined)[]): (Anchor | undefined)[] {
  const best: { length: number; from: number }[] = []
  let end = -1
  anchors.forEach((anchor, i) => {
    best[i] = { length: anchor ? 1 : 0, from: -1 }
    if (!anchor) return
    for (let j = 0; j < i; j++) {
      const earlier = anchors[j]
      if (!earlier || earlier.words.start > anchor.words.start) continue
      if (best[j]!.length + 1 > best[i]!.length) best[i] = { length: best[j]!.length + 1, from: j }
    }
    if (end < 0 || best[i]!.length > best[end]!.length) end = i
  })
  const kept = new Set<number>()
  for (let i = end; i >= 0; i = best[i]!.from) kept.add(i)
  return anchors.map((anchor, i) => (kept.has(i) ? anchor : undefined))
}

/** Past the blanks after a statement and the end of its line: a blank line stays in front of what follows it. */
function afterLine(text: string, end: number): number {
  let at = end
  while (text[at] === ' ' || text[at] === '\t') at++
  if (text[at] === '\r') at++
  if (text[at] === '\n') at++
  return at
}
