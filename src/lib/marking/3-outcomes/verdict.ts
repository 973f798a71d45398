import { draftEvidence } from './draft-evidence'
import { weigh } from './draft-model'
import { byCover, judgeByRule, mostSaid, type Case, type Judgement } from './judge'
import { isShort, pointEvidence } from './sureness'

/** What one page makes of one point. */
export function judge(open: Case, index: number): Judgement {
  const ruled = judgeByRule(open, index)
  const point = open.topic.points[index]!
  // A page of few statements is an answer to one question, and its evidence another (see `isShort`).
  if (!byCover(point) || ruled.clash || isShort(open.page)) return ruled
  return weighed(open, index, ruled)
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

/** What a drafted point is weighed by: the likeness of the words, and what the rules found. */
export function weighedEvidence(open: Case, index: number, ruled: Judgement): number[] {
  const { outcome, claims, said, cover, clash } = ruled
  const found = { outcome, claims, saidCount: said.filter(Boolean).length, cover }
  return [
    ...pointEvidence(open, index, { cover, clashes: clash !== undefined }),
    ...draftEvidence(open, index, found),
  ]
}
