/** What is said of the files that pupil and tutor exchange. */
import { dayOf, recallOf, type Check } from '../recall'
import { dayWords, timeWords } from './dates'
import { recallWords, writingFacts } from './sentences'
import { counted } from './words'

/** The facts of a check, in the words that the pupil sees before the file is saved and the tutor sees after. */
export interface Facts {
  readonly id: string
  readonly title: string
  readonly when: string
  readonly recall: string
  readonly facts: string
}

export const factsOf = (check: Check): Facts => ({
  id: check.id,
  title: check.topicTitle,
  when: `${dayWords(dayOf(check))}, ${timeWords(check.atMs, check.zone)}`,
  recall: `${recallWords(recallOf(check))} full${check.kind === 'gap' ? ', gap check' : ''}`,
  facts: writingFacts(check),
})

/** A name as a part of a file name: letters and figures of any script, joined by hyphens. */
export const fileNamePart = (name: string): string =>
  name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40) || 'pupil'

/** What the marks of a file from the tutor taught; nothing where they taught nothing. */
export const taughtWords = (wordings: number): string =>
  wordings === 0
    ? ''
    : `From them your points learnt ${counted(wordings, 'wording')}: each is shown on its page and its topic, and can be removed there.`

/** What came of a file from the tutor, in one or two sentences. */
export function returnedWords(done: {
  readonly tutor: string
  readonly checks: number
  readonly changed: readonly unknown[]
  readonly unknown: number
  readonly older: number
  readonly leftOff: number
}): string {
  const { tutor, checks, changed, unknown, older, leftOff } = done
  return [
    `${counted(checks, 'check')} from ${tutor || 'your tutor'}: the marks and comments stand on ${checks === 1 ? 'its page' : 'their pages'}, beside yours and the marker’s.`,
    changed.length === 0 && checks > 0 && 'No mark is other than before.',
    leftOff > 0 &&
      `${counted(leftOff, 'mark or comment', 'marks and comments')} that you took off before ${leftOff === 1 ? 'stays' : 'stay'} off: open this file again to have them back.`,
    unknown > 0 &&
      `${counted(unknown, 'more check')} of the file ${unknown === 1 ? 'is' : 'are'} not on this device.`,
    older > 0 &&
      `${counted(older, 'check')} had later marks already and ${older === 1 ? 'was' : 'were'} left as they are.`,
  ]
    .filter((part) => part !== false)
    .join(' ')
}
