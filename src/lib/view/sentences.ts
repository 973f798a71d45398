/** What the tool says of a check, a status and a date: facts from the other rooms made into sentences. */
import type { Outcome } from '../marking/types'
import {
  decidedOutcomes,
  type Check,
  type Day,
  type NextDate,
  type Recall,
  type Status,
  type StatusReason,
} from '../recall'
import { dayFrom, dayWords, shortDay } from './dates'
import { counted, durationWords, opening } from './words'

/** The four marks in words, as they stand beside a point. */
export const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  full: 'full',
  partial: 'part said',
  missed: 'missed',
  contradicted: 'says the opposite',
}

/** In the order in which they are offered to be chosen. */
export const OUTCOMES: readonly Outcome[] = ['full', 'partial', 'missed', 'contradicted']

export const outcomeWords = (outcome: Outcome): string => OUTCOME_WORDS[outcome]

/** "9 of 14 points full; 2 part said; 2 missed; 1 says the opposite." Marks that nothing has are left out. */
export function scoreLine({ full, partial, missed, contradicted, points }: Recall): string {
  if (points === 0) return 'No points were checked.'
  const others = [
    partial > 0 && `${partial} part said`,
    missed > 0 && `${missed} missed`,
    contradicted > 0 && `${contradicted} ${contradicted === 1 ? 'says' : 'say'} the opposite`,
  ].filter((part) => part !== false)
  return `${[`${full} of ${counted(points, 'point')} full`, ...others].join('; ')}.`
}

/** "9 of 14 points", for lists and tables. */
export const recallWords = ({ full, points }: Pick<Recall, 'full' | 'points'>): string =>
  `${full} of ${counted(points, 'point')}`

/** What the marker alone gave, where somebody changed a mark; empty where nobody did. */
export function changesLine(check: Check): string {
  const changed = decidedOutcomes(check).filter(
    ({ by, outcome, marker }) => by !== 'marker' && outcome !== marker,
  )
  if (changed.length === 0) return ''
  const full = check.marks.filter(({ outcome }) => outcome === 'full').length
  return `With ${counted(changed.length, 'mark')} changed. The marker alone gave ${full} of ${counted(check.marks.length, 'point')}.`
}

/** Words, time and pastes of a check, stated and not judged. */
export function writingFacts(
  check: Pick<Check, 'words' | 'writingMs' | 'pastes' | 'aways' | 'awayMs'>,
): string {
  const { words, writingMs, pastes, aways, awayMs = 0 } = check
  const pasted = pastes.reduce((sum, { length }) => sum + length, 0)
  const paste =
    pastes.length === 0
      ? 'Nothing was pasted.'
      : `${opening(counted(pastes.length, 'paste'))}, ${counted(pasted, 'character')}.`
  const awayWords =
    aways === undefined
      ? ''
      : aways === 0
        ? ' The page was in sight all the time.'
        : ` Away from the page ${counted(aways, 'time')}, ${durationWords(awayMs)} together.`
  return `${counted(words, 'word')} in ${durationWords(writingMs)}. ${paste}${awayWords}`
}

/** What a status means, in a few words. */
export const STATUS_WORDS: Readonly<Record<Status, string>> = {
  'not checked': 'Not checked yet',
  gaps: 'Gaps',
  full: 'Full, not yet finished',
  finished: 'Finished',
  reopened: 'Reopened',
}

/** Which rule gave a status, from what. */
export function statusSentence(reason: StatusReason, today: Day): string {
  switch (reason.rule) {
    case 'no-check':
      return 'There is no check of this topic yet.'
    case 'latest-not-full':
      return `The latest check, ${dayFrom(reason.day, today)}, had ${recallWords(reason.recall)} full. A topic has gaps until a check has every point.`
    case 'latest-full':
      return (
        `The latest check had every point. ${runWords(reason)} ` +
        `It is finished after ${ruleWords(reason)}: ${counted(reason.sessionsLeft, 'more full day')}, ` +
        `the last on ${shortDay(reason.finishableFrom, today)} at the earliest.`
      )
    case 'run-long-enough':
      return `Every point on ${counted(reason.run, 'day')} in a row, from ${shortDay(reason.firstDay, today)} to ${shortDay(reason.lastDay, today)}. The rule asks for ${ruleWords(reason)}.`
    case 'not-full-after-finished':
      return `It was finished on ${shortDay(reason.finishedOn, today)}; the check of ${shortDay(reason.day, today)} had ${recallWords(reason.recall)} full. The run starts again.`
  }
}

/** The rule that finishes a topic: the default numbers and where they come from. */
export const FINISH_SOURCE =
  'A topic is finished by full recalls in a row on widely spaced days: Rawson and Dunlosky (2011), Journal of Experimental Psychology: General 140(3), 283–302.'

const ruleWords = ({ sessionsNeeded, daysApart }: { sessionsNeeded: number; daysApart: number }) =>
  `${counted(sessionsNeeded, 'full day')} in a row` +
  (daysApart > 0 ? `, the last at least ${counted(daysApart, 'day')} after the first` : '')

const runWords = ({ run, firstDay }: { run: number; firstDay: Day }) =>
  run === 1
    ? `That is 1 full day, ${dayWords(firstDay)}.`
    : `That is ${run} full days in a row, the first on ${dayWords(firstDay)}.`

/** When to come back, as one short sentence. */
export function nextSentence({ day, gapsOn, why }: NextDate, today: Day): string {
  if (why.rule === 'not-checked') return 'Check it once you have learned it.'
  if (day === null) return 'No day is left before the exam.'
  const late = day < today
  const topic = late
    ? `The next check was due ${dayFrom(day, today)}.`
    : `The next check is ${dayFrom(day, today)}.`
  return gapsOn === today ? `The gaps again today. ${topic}` : topic
}

/** Which rule gave the date. */
export function nextReason({ why }: NextDate, today: Day): string {
  switch (why.rule) {
    case 'not-checked':
      return 'A date follows from the first check.'
    case 'after-gaps':
      return 'After a check with gaps: the gaps again the same day, the whole topic the day after.'
    case 'share-of-days-left':
      return `The exam is on ${shortDay(why.examDay, today)}, ${counted(why.daysLeft, 'day')} after the last check. The next check comes after about ${Math.round(why.share * 100)} % of those days: ${counted(why.gapDays, 'day')}. The share is that of Cepeda and others (2008), Psychological Science 19(11), 1095–1102.`
    case 'by-run':
      return `No exam date is set. After ${counted(why.run, 'full day')} in a row the next check comes after ${counted(why.gapDays, 'day')}: 1, 3, 7, 16, then 35.`
    case 'no-day-before-exam':
      return `The exam is on ${shortDay(why.examDay, today)}. A check is never put on the day of the exam.`
  }
}
