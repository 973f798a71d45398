/** Which of `folds` a name falls into: the same on every machine, whatever the order of the file. */
export function foldOf(name: string, folds: number): number {
  let hash = 0
  for (const letter of name) hash = (hash * 31 + letter.codePointAt(0)!) >>> 0
  return hash % folds
}

/** Numbers from 0 up to, not including, 1; the same for the same seed (Lehmer's generator, Park and Miller 1988). */
export function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
}

/** In an order that only the seed decides (Fisher and Yates). */
export function shuffled<T>(items: readonly T[], random: () => number): T[] {
  const list = [...items]
  for (let last = list.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1))
    ;[list[last], list[other]] = [list[other] as T, list[last] as T]
  }
  return list
}
