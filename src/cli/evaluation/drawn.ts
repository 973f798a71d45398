/** The fixed seed of every draw: the same answers are learnt from every time. */
const SEED = 20_131

/** Numbers from 0 to 1, the same every time. Source: mulberry32, Tommy Ettinger, public domain. */
function numbers(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** Every group of one key parted by chance, with a fixed seed, into the `count` drawn and the rest. */
export function drawn<T>(
  all: readonly T[],
  key: (one: T) => string,
  count: number,
): { readonly drawn: readonly T[]; readonly rest: readonly T[] }[] {
  const groups = new Map<string, T[]>()
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one])
  const next = numbers(SEED)
  return [...groups.values()].map((group) => {
    const mixed = group
      .map((one) => ({ one, at: next() }))
      .sort((a, b) => a.at - b.at)
      .map(({ one }) => one)
    return { drawn: mixed.slice(0, count), rest: mixed.slice(count) }
  })
}
