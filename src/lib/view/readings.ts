/** What a field of a point asks for, in plain language. `undefined` where it cannot be read yet: then its mistake is told. */
import {
  NotationError,
  readIdea,
  readValue,
  readWordings,
  type Wording,
  type WordSlot,
} from '../syllabus'
import { listed } from './words'

/** `waves / swash + at an angle` is "either waves or swash, and: at an angle". */
export const ideaReading = (written: string): string | undefined =>
  unlessMistaken(() =>
    readIdea(written)
      .parts.map(({ wordings }) => alternatives(wordings))
      .join(', and: '),
  )

/** The words for a symbol: "wave speed or speed". */
export const wordsReading = (written: string): string | undefined =>
  unlessMistaken(() => alternatives(readWordings(written)))

/** "between 9.6 and 10 N/kg". */
export const valueReading = (written: string): string | undefined =>
  unlessMistaken(() => {
    const { number, tolerance, unit } = readValue(written)
    const units = unit === undefined ? '' : ` ${unit}`
    if (tolerance === 0) return `${figures(number)}${units} and nothing else`
    return `between ${figures(number - tolerance)} and ${figures(number + tolerance)}${units}`
  })

/** How many of the ideas are needed: "all 3 of them", "any 2 of these 4". */
export function neededReading(any: string, ideas: number): string | undefined {
  if (any.trim() === '') return ideas === 1 ? 'This one is needed.' : `All ${ideas} are needed.`
  const enough = Number(any)
  return Number.isInteger(enough) && enough >= 1 && enough <= ideas
    ? `Any ${enough} of these ${ideas} are enough.`
    : undefined
}

function alternatives(wordings: readonly Wording[]): string {
  const said = wordings.flatMap(sayings)
  if (said.length === 2) return `either ${said[0]} or ${said[1]}`
  return said.length > 2 ? `one of: ${listed(said, 'or')}` : said.join('')
}

/** With one thing that may be left out, both ways to say it; with several, brackets as they stand. */
function sayings({ words, exact }: Wording): string[] {
  if (exact) return [`the term “${bracketed(words)}” itself`]
  const groups = words.filter(
    (word, i) => (word.optional && !words[i - 1]?.optional) || word.suffix !== undefined,
  )
  if (groups.length !== 1) return [bracketed(words)]
  const without = words.filter(({ optional }) => !optional).map(({ text }) => text)
  const whole = words.map(({ text, suffix = '' }) => text + suffix)
  return [without.join(' '), whole.join(' ')]
}

function bracketed(words: readonly WordSlot[]): string {
  return words
    .map(({ text, optional, suffix }, i) => {
      const opens = optional && !words[i - 1]?.optional ? '(' : ''
      const closes = optional && !words[i + 1]?.optional ? ')' : ''
      return `${opens}${text}${suffix === undefined ? '' : `(${suffix})`}${closes}`
    })
    .join(' ')
}

/** Without the traces of binary fractions: 9.8 − 0.2 is 9.6. */
const figures = (number: number): string => String(Number(number.toPrecision(12)))

function unlessMistaken(read: () => string): string | undefined {
  try {
    return read()
  } catch (error) {
    if (error instanceof NotationError) return undefined
    throw error
  }
}
