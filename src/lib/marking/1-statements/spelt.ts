import type { ReadPage } from './page'
import type { Statement } from './statements'

/** The text of a statement with its misspellings read as the words that they can only be. */
export interface Spelt {
  readonly text: string
  /** Where a place in that text stands on the page. */
  readonly placeOf: (offset: number) => number
}

/** For readers of running text (`10 degres C`); what is looked up word by word needs it not. */
export function speltOut(page: ReadPage, { from, to, start, end }: Statement): Spelt {
  const { text, tokens, corrected } = page
  if (corrected.subarray(from, to).every((c) => c === 0))
    return { text: text.slice(start, end), placeOf: (offset) => start + offset }
  let spelt = ''
  let done = start
  /** Each corrected word: where it ends in the text made, and on the page. */
  const ends: { readonly made: number; readonly page: number; readonly grown: number }[] = []
  for (let i = from; i < to; i += 1) {
    if (!corrected[i]) continue
    const token = tokens[i]!
    spelt += text.slice(done, token.start) + token.text
    done = token.end
    ends.push({
      made: spelt.length,
      page: done,
      grown: token.text.length - (token.end - token.start),
    })
  }
  spelt += text.slice(done, end)
  return {
    text: spelt,
    placeOf(offset) {
      let grown = 0
      for (const one of ends) {
        if (offset < one.made) return Math.min(one.page, start + offset - grown)
        grown += one.grown
      }
      return start + offset - grown
    },
  }
}
