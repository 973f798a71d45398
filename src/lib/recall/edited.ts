/** Points that were edited after they were checked: which marks still belong to a point of today. */
import { decidedOutcomes, type Decided } from './outcomes'
import type { Check } from './types'

/**
 * The marks of a check by the refs that its points have today. A point whose meaning was changed since begins anew: what
 * was marked then is left out, here and in every list that is made of points. The check itself stays as it was marked.
 */
export function marksOfToday(check: Check): Decided[] {
  const since = new Map(check.edited?.map(({ ref, now }) => [ref, now]))
  return decidedOutcomes(check).flatMap((mark) => {
    const now = since.get(mark.ref)
    return now === null ? [] : [{ ...mark, ref: now ?? mark.ref }]
  })
}
