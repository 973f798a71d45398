import type { ReadPage } from '../1-statements/page'
import type { ReadyPoint } from '../2-ideas/ready'
import type { Case } from './judge'
import { evidence, referenceOf, type Reference } from './likeness'
import { BIAS, WEIGHTS } from './sureness-weights'

/** On a page of so few statements all of it is the answer. */
const FEW = 4

/** Is the page so short that all of it is the answer to one question? */
export const isShort = ({ statements }: ReadPage): boolean => statements.length <= FEW

const references = new WeakMap<ReadyPoint, Reference>()

function referenceFor({ topic }: Case, index: number): Reference {
  const point = topic.points[index]!
  const known = references.get(point) ?? referenceOf(point.point.text, topic.titleKeys)
  references.set(point, known)
  return known
}

/** The evidence for a point, in the statement that is most about it and those that carry it on. */
export function pointEvidence(
  open: Case,
  index: number,
  marker: { readonly cover: number; readonly clashes: boolean },
): number[] {
  const reference = referenceFor(open, index)
  const [from, to] = placeOf(open, index)
  return evidence(reference, open.page, from, to, marker)
}

/** The tokens that may say the point. */
function placeOf({ page, about, carried }: Case, index: number): readonly [number, number] {
  const { statements } = page
  if (isShort(page)) return [0, page.tokens.length]
  const s = about.nearest(index, 0)
  if (s === undefined) return [0, 0]
  const share = (k: number) => (k >= 0 && k < statements.length ? about.share(index, k) : -1)
  const before = s > 0 && carried[s - 1] && share(s - 1) > 0
  const after = carried[s] && share(s + 1) > 0
  const first = before && (!after || share(s - 1) > share(s + 1)) ? s - 1 : s
  const last = first === s && after ? s + 1 : s
  return [statements[first]!.from, statements[last]!.to]
}

/** The probability that what the evidence comes from says all of the point, 0 to 1. */
export function surenessFrom(numbers: readonly number[]): number {
  return 1 / (1 + Math.exp(-logOdds(numbers)))
}

export function logOdds(numbers: readonly number[]): number {
  return numbers.reduce((sum, x, i) => sum + WEIGHTS[i]! * x, BIAS)
}
