/** How long a check will take, in words. */
import type { HowLong } from '../recall'
import { counted, durationWords } from './words'

/** "About 36 minutes for 24 points." or "About 12 minutes, as your last checks took." */
export const howLongSentence = ({ minutes, from }: HowLong, points: number): string =>
  from === 'points'
    ? `About ${minutesWords(minutes)} for ${counted(points, 'point')}.`
    : `About ${minutesWords(minutes)}, as your last checks took.`

/** "12 minutes", "1 hour 5 minutes". */
export const minutesWords = (minutes: number): string => durationWords(minutes * 60_000)
