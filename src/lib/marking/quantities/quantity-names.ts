import type { Wording, WordSlot } from '../../syllabus/types'
import { isStopWord } from '../lexicon'
import { phraseOf, type Phrase } from '../words/phrases'
import { isVerb } from '../words/verbs'

const MEASURES = new Set(['quantity', 'amount', 'number'])

/**
 * What each symbol of an equation is called: as its author wrote it, and as it is also said: `amount of water` is how much water,
 * `distance travelled` is the distance. A word that two quantities share stands for neither by itself.
 */
export function namesOf(
  where: Readonly<Record<string, readonly Wording[]>>,
): ReadonlyMap<string, readonly Phrase[]> {
  return new Map(
    Object.entries(where).map(([symbol, wordings]) => {
      const others = new Set(
        Object.entries(where).flatMap(([other, own]) =>
          other === symbol ? [] : own.flatMap(({ words }) => words.map(({ text }) => text)),
        ),
      )
      const shorter = wordings
        .filter(({ exact }) => !exact)
        .map((wording): Wording => ({
          ...wording,
          words: withoutMeasure(onlyThing(wording.words)),
        }))
        .filter(({ words }) => words.some(({ text }) => !isStopWord(text)))
        .filter(({ words }) => !words.some(({ text }) => others.has(text) && !isStopWord(text)))
      return [symbol, [...wordings, ...shorter].map(phraseOf)]
    }),
  )
}

function onlyThing(words: readonly WordSlot[]): readonly WordSlot[] {
  const last = words[words.length - 1]
  return words.length > 1 && last && isVerb(last.text) ? onlyThing(words.slice(0, -1)) : words
}

function withoutMeasure(words: readonly WordSlot[]): readonly WordSlot[] {
  const k = words.findIndex(({ text }) => text === 'of')
  return k > 0 && MEASURES.has(words[k - 1]!.text) ? words.slice(k + 1) : words
}
