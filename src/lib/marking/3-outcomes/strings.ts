/** How often each three letters stand side by side, in lower case, anything else read as a space. */
export type Trigrams = ReadonlyMap<string, number>

export function trigramsOf(text: string): Trigrams {
  const plain = ` ${text.toLowerCase().replace(/[^a-z0-9]+/g, ' ')} `
  const counts = new Map<string, number>()
  for (let i = 0; i + 3 <= plain.length; i += 1) {
    const three = plain.slice(i, i + 3)
    counts.set(three, (counts.get(three) ?? 0) + 1)
  }
  return counts
}

/** 0 (nothing in common) to 1 (the same shares). */
export function cosine(one: Trigrams, two: Trigrams): number {
  let product = 0
  let squares = 0
  let others = 0
  for (const [three, count] of one) {
    squares += count * count
    product += count * (two.get(three) ?? 0)
  }
  for (const count of two.values()) others += count * count
  return squares === 0 || others === 0 ? 0 : product / Math.sqrt(squares * others)
}

/** The length of the longest common subsequence. */
export function longestInOrder(one: readonly string[], two: readonly string[]): number {
  const row = new Array<number>(two.length + 1).fill(0)
  for (const word of one) {
    let diagonal = 0
    for (let k = 1; k <= two.length; k += 1) {
      const above = row[k]!
      row[k] = word === two[k - 1] ? diagonal + 1 : Math.max(above, row[k - 1]!)
      diagonal = above
    }
  }
  return row[two.length]!
}
