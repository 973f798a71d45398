/** A short sign of a value: whether it is still what was written. No protection against anybody. */

/** FNV-1a, 32 bits, over UTF-16 code units. Source: Fowler, Noll, Vo; IETF draft-eastlake-fnv. */
export function fnv1a(text: string): number {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i += 1)
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0
  return hash
}

/** Of any value that JSON can say; what it cannot say is not told apart. */
export function fingerprint(value: unknown): string {
  const text = JSON.stringify(value) ?? ''
  return `${text.length}:${fnv1a(text).toString(16)}`
}
