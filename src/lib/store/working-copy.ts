/** What is kept, copied into memory: what a restore would do is done here first, so that it is known before it happens. */
import { sameJson } from './aside'
import { asidePrefix } from './keys'

export interface Change {
  readonly key: string
  /** What stood there; absent where nothing did. */
  readonly before?: unknown
  readonly after: unknown
}

export interface WorkingCopy {
  /** `undefined` where nothing stands. */
  readonly get: (key: string) => unknown
  readonly put: (key: string, value: unknown) => void
  /** Raw values by key, of all keys that begin so. */
  readonly under: (prefix: string) => [string, unknown][]
  /** As `setAside` of the records: the same value is not copied twice. */
  readonly setAside: (key: string, value: unknown) => void
  /** What became another than it was. */
  readonly changes: () => Change[]
}

export function workingCopy(kept: ReadonlyMap<string, unknown>): WorkingCopy {
  const written = new Map<string, unknown>()
  const has = (key: string) => written.has(key) || kept.has(key)
  const get = (key: string) => (written.has(key) ? written.get(key) : kept.get(key))
  const under = (prefix: string): [string, unknown][] =>
    [...new Set([...kept.keys(), ...written.keys()])]
      .filter((key) => key.startsWith(prefix))
      .map((key) => [key, get(key)])
  return {
    get,
    put: (key, value) => written.set(key, value),
    under,
    setAside(key, value) {
      const prefix = asidePrefix(key)
      if (under(prefix).some(([, there]) => sameJson(there, value))) return
      let n = 1
      while (has(prefix + n)) n += 1
      written.set(prefix + n, value)
    },
    changes: () =>
      [...written].flatMap(([key, after]): Change[] => {
        if (!kept.has(key)) return [{ key, after }]
        const before = kept.get(key)
        return sameJson(before, after) ? [] : [{ key, before, after }]
      }),
  }
}
