/** What the plan says of itself, of its days, and of what it cannot hold. */
import type { Day, ExamPlan, FinishRule, PlannedCheck, PlanWarning, TopicPlace } from '../recall'
import { dayFrom, shortDay } from './dates'
import { counted, durationWords, listed } from './words'

const minutesWords = (minutes: number): string => durationWords(minutes * 60_000)

/** "3 checks, 45 minutes". */
export const dayLoad = (checks: number, minutes: number): string =>
  `${counted(checks, 'check')}, ${minutesWords(minutes)}`

/** The day that the rules give, where a check is on another because that one is full; '' where it is on it. */
export function movedWords({ day, due }: PlannedCheck, today: Day): string {
  if (day === due) return ''
  return `instead of ${shortDay(due, today)}`
}

/** One or two sentences: what does not fit, and what to do about it. */
export function warningSentence<T extends TopicPlace>(
  warning: PlanWarning<T>,
  titleOf: (topic: T) => string,
  { today, minutesADay }: Pick<ExamPlan, 'today' | 'minutesADay'>,
  { sessionsNeeded, daysApart }: FinishRule,
): string {
  const topics = someOf(warning.topics.map(titleOf))
  switch (warning.rule) {
    case 'too-little-time': {
      const { minutesMissing, minutesADayNeeded } = warning
      const missing = `Before ${examWords(warning.examDay, today)} ${minutesWords(minutesMissing)} of checks have no room: ${topics}.`
      const unchecked =
        warning.unchecked.length > 0 &&
        `No check at all: ${someOf(warning.unchecked.map(titleOf))}.`
      const more =
        minutesADayNeeded === null
          ? 'More minutes a day would not hold them either: decide which topics to leave out.'
          : `With ${minutesWords(minutesADayNeeded)} a day instead of ${minutesADay} it all fits. As it is, every topic is checked once before one is checked again, the hardest first.`
      return [missing, unchecked, more].filter((part) => part !== false).join(' ')
    }
    case 'too-few-days':
      return `The days before ${examWords(warning.examDay, today)} are too few to finish ${topics}: it takes ${counted(sessionsNeeded, 'full day')}, the last at least ${counted(daysApart, 'day')} after the first. The plan checks them as often as the rules allow.`
    case 'no-day-left':
      return `No day for a check is left before ${examWords(warning.examDay, today)}: ${topics}. Tonight’s list is what helps now.`
    case 'longer-than-a-day':
      return `One check takes up to ${minutesWords(warning.minutes)}, more than your ${minutesADay} a day: ${topics}. Each of them has a day for itself.`
    case 'later-than-planned':
      return `Until ${shortDay(warning.until, today)} there is no room for all checks of ${topics}. They come later, unless you give more minutes a day.`
  }
}

/** "the exam today", "the exam on 14 April". */
function examWords(day: Day, today: Day): string {
  const near = dayFrom(day, today)
  return /^(?:today|tomorrow)$/.test(near)
    ? `the exam ${near}`
    : `the exam on ${shortDay(day, today)}`
}

const MOST_NAMED = 6

function someOf(titles: readonly string[]): string {
  if (titles.length <= MOST_NAMED) return listed(titles)
  return `${titles.slice(0, MOST_NAMED).join(', ')} and ${titles.length - MOST_NAMED} others`
}
