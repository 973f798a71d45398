import { draftEvidence } from './draft-evidence'
import { fullOf, weigh } from './draft-model'
import { byCover, judgeByRule, mostSaid, type Case, type Judgement } from './judge'
import { isShort, pointEvidence } from './sureness'
import { AUTHORED_SURE } from './draft-weights'

/** What one page makes of one point. */
export function judge(open: Case, index: number): Judgement {
  const ruled = judgeByRule(open, index)
  // A page of few statements is an answer to one question, and its evidence another (see `isShort`).
  if (!isWeighed(open, index, ruled) || isShort(open.page)) return ruled
  if (open.topic.points[index]!.drafted) return weighed(open, index, ruled)
  return nearlySaid(ruled) ? inOtherWords(open, index, ruled) : ruled
}

/** Is there anything to weigh? Steps, lists, equations and what clashes are judged by the rules alone. */
export function isWeighed({ topic }: Case, index: number, { clash }: Judgement): boolean {
  const { point, drafted } = topic.points[index]!
  const plain = !point.steps && !point.equation && point.any === undefined
  return plain && !clash && (!drafted || byCover(topic.points[index]!))
}

/**
 * Half of an author's ideas and more were found, and none of the rest is an exact term or a value: what is missing may be said in words
 * that no idea has.
 */
export function nearlySaid({ outcome, claims, said }: Judgement): boolean {
  if (outcome !== 'partial' || said.filter(Boolean).length * 2 < claims.length) return false
  return claims.every(
    ({ kind, idea }, c) =>
      said[c] !== undefined ||
      (kind === 'idea' && idea?.parts.some((part) => part.every(({ exact }) => exact)) === false),
  )
}

function inOtherWords(open: Case, index: number, ruled: Judgement): Judgement {
  const full = fullOf(weighedEvidence(open, index, ruled))
  const place = mostSaid(ruled.said)
  if (full < AUTHORED_SURE || place === undefined) return { ...ruled, sureness: full }
  const { nearest: _, ...rest } = ruled
  return { ...rest, outcome: 'full', sureness: full, offered: false, inOtherWords: place }
}

/** The judgement of a drafted point after the numbers that tell how much of it is said: see `draft-model.ts`. */
function weighed(open: Case, index: number, ruled: Judgement): Judgement {
  const { outcome, full } = weigh(weighedEvidence(open, index, ruled))
  const nearest = ruled.nearest ?? mostSaid(ruled.said) ?? open.about.nearest(index, 0.25)
  const { nearest: _, ...rest } = ruled
  if (outcome === 'full' && nearest !== undefined)
    return { ...rest, outcome, sureness: full, offered: false, inOtherWords: nearest }
  const marked = outcome === 'full' ? 'partial' : outcome
  return {
    ...rest,
    outcome: marked,
    ...(nearest === undefined ? {} : { nearest }),
    sureness: full,
    offered:
      nearest !== undefined &&
      (ruled.offered || ruled.outcome === 'full' || open.about.share(index, nearest) >= 0.5),
  }
}

/** What a point is weighed by: the likeness of the words, and what the rules found. */
export function weighedEvidence(open: Case, index: number, ruled: Judgement): number[] {
  const { outcome, claims, said, cover, clash } = ruled
  const found = { outcome, claims, saidCount: said.filter(Boolean).length, cover }
  return [
    ...pointEvidence(open, index, { cover, clashes: clash !== undefined }),
    ...draftEvidence(open, index, found),
  ]
}
