/** Phrases of several words by the first of them, so that a place in a text is only compared with those that can stand there. */
export function byFirstWord(
  phrases: readonly string[],
): ReadonlyMap<string, readonly (readonly string[])[]> {
  const found = new Map<string, (readonly string[])[]>()
  for (const phrase of phrases) {
    const words = phrase.split(' ')
    const others = found.get(words[0]!)
    if (others) others.push(words)
    else found.set(words[0]!, [words])
  }
  return found
}
