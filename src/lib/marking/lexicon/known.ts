import { knownWords } from './known-words'

let decoded: Set<string> | undefined

function words(): Set<string> {
  if (decoded) return decoded
  decoded = new Set()
  let word = ''
  for (const [entry] of knownWords.matchAll(/[A-Z][a-z]*/g)) {
    word = word.slice(0, entry.charCodeAt(0) - 65) + entry.slice(1)
    decoded.add(word)
  }
  return decoded
}

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
  const list = words()
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
