import { readWordings } from '../../syllabus/notation'
import type { Wording } from '../../syllabus/types'
import { isDirectionWord, isFiller, isStopWord } from '../lexicon'
import { isVerb } from '../words/verbs'

/** `Wave speed is frequency times wavelength`: three quantities and what is done with two of them. */
export interface DraftedEquation {
  /** As it is shown: `wave speed = frequency × wavelength`. */
  readonly shown: string
  /** The same with signs for the quantities. */
  readonly written: string
  readonly where: Readonly<Record<string, readonly Wording[]>>
}

const SENTENCE =
  /^(?:the |an? )?(?<whole>[^,;:]+?) (?:is|are|equals|is equal to|is found by|is calculated as|is worked out as) (?:the )?(?<one>[^,;:]+?) (?<does>times|multiplied by|divided by|plus|minus) (?:the |its |their )?(?<two>[^,;:.]+?)(?: (?:times|multiplied by) (?<by>\d+))?\.?$/i
const PRODUCT =
  /^(?:the |an? )?(?<whole>[^,;:]+?) (?:is|equals) the product of (?:the )?(?<one>[^,;:]+?) and (?:the )?(?<two>[^,;:.]+)\.?$/i

const SIGNS: Readonly<Record<string, string>> = {
  times: '×',
  'multiplied by': '×',
  'divided by': '/',
  plus: '+',
  minus: '-',
}
/** Content words in the name of a quantity. */
const MOST_WORDS = 5
/** Letters that no one types for anything else. */
const [WHOLE, ONE, TWO] = ['ꭐ', 'ꭑ', 'ꭒ']

export function draftEquation(text: string): DraftedEquation | undefined {
  const plain = text.replace(/\s*\([^)]*\)/g, '').trim()
  const { whole, one, two, does, by } = (SENTENCE.exec(plain) ?? PRODUCT.exec(plain))?.groups ?? {}
  if (!whole || !one || !two || OPERATION.test(`${one} ${two}`)) return undefined
  const terms = [whole, one, two]
  const sizes = terms.map((term) => content(wordsOf(term)).length)
  if (sizes.some((size) => size === 0 || size > MOST_WORDS)) return undefined
  const sign = SIGNS[(does ?? 'times').toLowerCase()]!
  const numbers = [one, two].map((term) => numberOf(term))
  const names = [WHOLE, ONE, TWO].filter((_, t) => t === 0 || numbers[t - 1] === undefined)
  return {
    shown: `${whole} = ${one} ${sign} ${two}${by ? ` × ${by}` : ''}`,
    written: `${WHOLE} = ${numbers[0] ?? ONE} ${sign} ${numbers[1] ?? TWO}${by ? ` × ${by}` : ''}`,
    where: Object.fromEntries(
      names.map((name) => [name, wordingsOf(terms, [WHOLE, ONE, TWO].indexOf(name))]),
    ),
  }
}

const OPERATION = /\b(?:times|multiplied|divided|plus|minus)\b/i
const numberOf = (term: string): string | undefined =>
  /^one$/i.test(term.trim()) ? '1' : /^\d+$/.exec(term.trim())?.[0]

const MEASURED = /^(?:the\s)?(?:quantity|amount|number)\sof\s(.*)$/i

const wordsOf = (term: string): string[] => term.toLowerCase().match(/[\p{L}\d-]+/gu) ?? []
const content = (words: readonly string[]): string[] =>
  words.filter((word) => !isStopWord(word) && !isDirectionWord(word))

// The whole term; its head (`speed` of `wave speed`, `volume` of `volume of the solution`); what it is counted in (`amount in
// moles`). A word that another of the quantities has too stands for neither.
function wordingsOf(terms: readonly string[], t: number): readonly Wording[] {
  const others = new Set(terms.flatMap((term, k) => (k === t ? [] : wordsOf(term))))
  const [head = [], counted = []] = [/^(.*?)(?:\s(?:of|in|for|from|per)\s|$)/, /\sin\s(.*)$/].map(
    (part) => content(wordsOf(part.exec(terms[t]!)?.[1] ?? '')),
  )
  // `the quantity of product formed` is how much product.
  const [measured] = content(wordsOf(MEASURED.exec(terms[t]!)?.[1] ?? ''))
  // `time taken`, `distance travelled`: the thing, not what is done with it.
  const thing = head.filter((word) => !isVerb(word)).at(-1) ?? head.at(-1)
  const own = [thing, measured, ...counted].filter(
    (word): word is string => word !== undefined && !others.has(word) && !isFiller(word),
  )
  return readWordings([...new Set([content(wordsOf(terms[t]!)).join(' '), ...own])].join(' / '))
}
