/** Points that were edited after they were checked: which marks still belong to a point of today. */
import { decidedOutcomes, type Decided } from './outcomes'
import type { Check } from './types'

/**
 * The marks of a check by the refs that its points have today. A point whose meaning was changed since begins anew: what
 * was marked then is left out, here and in every list that is made of points. The check itself stays as it was marked.
 */
export function marksOfToday(check: Check): Decided[] {
  return decidedOutcomes(check).flatMap((mark) => {
    const ref = refToday(check.edited, mark.ref)
    return ref === null ? [] : [{ ...mark, ref }]
  })
}

/** The ref of today of a point that a check or a paper has under `ref`; null where no point means the same any more. */
export function refToday(edited: Check['edited'], ref: string): string | null {
  const since = edited?.find((point) => point.ref === ref)
  return since === undefined ? ref : since.now
}
