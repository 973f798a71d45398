import { FrontCoded } from './front-coded'
import { knownWords } from './known-words'

const list = new FrontCoded(knownWords)

const ENDINGS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/ies$/, ['y']],
  [/(?:s|x|z|ch|sh|o)es$/, ['$']],
  [/s$/, ['']],
  [/ied$/, ['y']],
  [/(?:ed|ing)$/, ['', 'e']],
  [/(?:er|est)$/, ['', 'e']],
  [/ily$/, ['y']],
  [/ly$/, ['', 'le']],
  [/'s$/, ['']],
]

/** Is it an English word, in its base form or inflected by rule? The list holds base forms. */
export function isKnownWord(word: string): boolean {
  if (list.has(word)) return true
  for (const [ending, instead] of ENDINGS) {
    const hit = ending.exec(word)
    if (!hit) continue
    for (const end of instead) {
      const base = end === '$' ? word.slice(0, -2) : word.slice(0, hit.index) + end
      // Comparatives are of short words (denser, but not indicater); and a short base may be an accident (suply is not sup + ly).
      if (/(?:er|est)$/.test(word) && base.length > 5) continue
      if (base.length > (/(?:ly|er|est|ed|ing)$/.test(word) ? 3 : 2) && list.has(base)) return true
      // planned: the last letter is doubled before the ending
      if (end === '' && /([bdgklmnprt])\1$/.test(base) && list.has(base.slice(0, -1))) return true
    }
  }
  return false
}
