/** The one of `known` that `word` most likely means: at most a third of its letters off; undefined if none is. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const lower = word.toLowerCase()
  const [best] = known
    .map((name) => ({ name, off: lower.length > 40 ? Infinity : editDistance(lower, name) }))
    .filter(({ name, off }) => off <= Math.max(1, Math.floor(name.length / 3)))
    .sort((a, b) => a.off - b.off)
  return best?.name
}

/** Letters to put in, leave out or change (Levenshtein), neighbours swapped counting as one (Damerau). */
function editDistance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const change = rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      row[j] = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, change)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        row[j] = Math.min(row[j]!, rows[i - 2]![j - 2]! + 1)
      }
    }
    rows.push(row)
  }
  return rows[a.length]![b.length]!
}
