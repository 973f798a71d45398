/** What a round says: how many are left, what a mark means for the pile, why a point is on tonight's list. */
import type { Outcome } from '../marking/types'
import type { Day, TonightReason } from '../recall'
import { dayFrom } from './dates'
import { outcomeWords } from './sentences'
import { counted, opening } from './words'

export const leftWords = (left: number): string =>
  left === 0 ? 'None left' : `${counted(left, 'point')} left`

/** After a point was marked, for the eye and for a live region. */
export function markedSentence(ref: string, outcome: Outcome, left: number): string {
  const stays = outcome === 'full' ? 'It leaves the pile' : 'It comes round again'
  return `Point ${ref}: ${outcomeWords(outcome)}. ${stays}. ${leftWords(outcome === 'full' ? left - 1 : left)}.`
}

/** Which rule put a point on tonight's list. */
export function tonightWhy(why: TonightReason, today: Day): string {
  switch (why.rule) {
    case 'not-full': {
      const where = { check: 'in the check', gap: 'when last drilled', paper: 'on a paper' }[why.in]
      const was =
        why.outcome === 'contradicted' ? 'Said the opposite' : opening(outcomeWords(why.outcome))
      return `${was} ${where}, ${dayFrom(why.day, today)}.`
    }
    case 'full-once-since':
      return `Not full ${dayFrom(why.missedOn, today)}, full only once since.`
    case 'never-seen':
      return 'Never checked.'
    case 'longest-unseen':
      return why.days === 0 ? 'Full today.' : `Full, and not seen for ${counted(why.days, 'day')}.`
  }
}

/**
 * What was written on a point as one text. Steps are told as they were asked, one after another: their order is part of
 * the answer, and lines that only stand below each other say none.
 */
export const writtenOf = (texts: readonly string[], steps: boolean): string =>
  texts
    .filter((text) => text.trim() !== '')
    .map((text, i) => (steps ? stepSaid(text.trim(), i) : text))
    .join('\n')

function stepSaid(text: string, at: number): string {
  const own = text.replace(/^\d+[.)]\s*/, '').replace(/^(?:first|then|next|finally)\b,?\s*/i, '')
  const begun = /^\p{Lu}\p{Ll}/u.test(own) ? own.charAt(0).toLowerCase() + own.slice(1) : own
  return `${at === 0 ? 'First' : 'Then'} ${begun}${/[.!?]$/.test(begun) ? '' : '.'}`
}
