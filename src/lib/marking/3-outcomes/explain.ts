import type { Claim } from '../2-ideas/claims'
import type { ReadPage } from '../1-statements/page'
import type { Judgement } from './judge'
import { plainIdea } from './plain-idea'
import { spanOf, wordsAt } from './spans'

/** One plain sentence for the student: what was said, what was not, or what clashes. */
export function explain(page: ReadPage, judgement: Judgement): string {
  const { outcome, claims, said, clash, nearest } = judgement
  if (clash) return explainClash(page, judgement)
  if (judgement.learnt === 'accepted') return 'You said it in words that were accepted before.'
  if (judgement.learnt === 'refused')
    return 'You said this before, and it was not enough. It is shown beside it for you to decide.'
  const missing = claims.filter((_, i) => !said[i])
  switch (outcome) {
    case 'full':
      if (missing.length > 0) return 'You said it, partly in other words.'
      return claims.length === 1 ? 'You said it.' : 'You said all of it.'
    case 'partial': {
      const half = missing.find((claim) => claim.kind === 'value' && claim.halves.length > 0)
      if (half) return `You gave the number; you did not give the unit: ${half.label}.`
      const got = claims.filter((_, i) => said[i])
      if (missing.length === 0)
        return 'You came near, but did not plainly say all of it. The nearest is shown beside it.'
      if (got.length === 0) return `You said part of it. You did not plainly say: ${list(missing)}.`
      return `You said: ${list(got)}. You did not say: ${list(missing)}.`
    }
    case 'missed':
      return nearest !== undefined && judgement.offered
        ? 'Not clearly said. The nearest you came is shown beside it.'
        : 'Not said on this page.'
    case 'contradicted':
      return 'Your page says something that this point rules out.'
  }
}

function explainClash(page: ReadPage, { clash }: Judgement): string {
  const { kind, at, against } = clash!
  const quoted = `“${wordsAt(page, spanOf(page, at))}”`
  switch (kind) {
    case 'rejected':
      return `You wrote ${quoted}; this point rules that out.`
    case 'negated':
      return `You wrote ${quoted}; the syllabus has it the other way round.`
    case 'opposite':
      return `You wrote ${quoted}; the syllabus has the opposite.`
    case 'swapped':
      return `You wrote ${quoted}; that belongs to something else on this syllabus.`
    case 'value':
      return `You wrote ${quoted}; the syllabus has ${against}.`
    case 'equation':
      return `You wrote ${quoted}; that is not a form of ${against}.`
    case 'order':
      return `Your steps come in another order. The syllabus has: ${against}.`
  }
}

function list(claims: readonly Claim[]): string {
  return claims.map((claim) => plainIdea(claim.label)).join('; ')
}
