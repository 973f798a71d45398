import type { Case, Judgement } from './judge'

/** Below this share of a point's words a statement says nothing of the point. */
const TOUCHES = 0.3

/** Rule 18: the statements that match no point: no idea counted in them, nothing clashes, and none is near a point. */
export function beyondThe(open: Case, judgements: readonly Judgement[]): number[] {
  const used = new Set<number>()
  for (const { said, clash, accepted } of judgements) {
    if (accepted !== undefined) used.add(accepted)
    for (const o of said) if (o) used.add(o.statement)
    if (clash) used.add(clash.statement)
  }
  return open.page.statements
    .map((statement) => statement.index)
    .filter((s) => !used.has(s) && open.about.best[s]! < TOUCHES)
}
