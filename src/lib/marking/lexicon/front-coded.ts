/**
 * Words in one string, each as one capital for how many letters it shares with the word before (A: none) and then the rest. Only the words
 * that begin with the same two letters as the one that is asked for are ever taken out: a page needs few of them.
 */
export class FrontCoded {
  /** By two first letters: their stretch of the string as it is, or its words. */
  private readonly stretches = new Map<string, string | ReadonlySet<string>>()

  constructor(coded: string) {
    let [first, key, from] = ['', '', 0]
    for (const { 0: entry, index } of coded.matchAll(/[AB][^A-Z]*/g)) {
      if (index > from) this.stretches.set(key, coded.slice(from, index))
      if (entry.startsWith('A')) first = entry.charAt(1)
      key = entry.startsWith('A') ? entry.slice(1, 3) : first + entry.slice(1, 2)
      from = index
    }
    this.stretches.set(key, coded.slice(from))
  }

  has(word: string): boolean {
    const key = word.slice(0, 2)
    let stretch = this.stretches.get(key)
    if (typeof stretch === 'string') {
      stretch = wordsOf(stretch, key)
      this.stretches.set(key, stretch)
    }
    return stretch?.has(word) ?? false
  }
}

/** All words of a list, or of a stretch of one whose first word shares letters with `before`. */
export function wordsOf(stretch: string, before = ''): ReadonlySet<string> {
  const words = new Set<string>()
  let word = before
  for (const [entry] of stretch.matchAll(/[A-Z][^A-Z]*/g)) {
    word = word.slice(0, entry.charCodeAt(0) - 65) + entry.slice(1)
    words.add(word)
  }
  return words
}
