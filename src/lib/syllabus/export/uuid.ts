/** Names -> UUIDs of version 5 (RFC 9562, section 5.5), the same for the same name on every machine. */

// The browser's own SHA-1 is there only where the app is served with https, and answers later.
import { sha1 } from './sha1'

/** `namespace` is a UUID; the name is taken in UTF-8. */
export function uuidOf(namespace: string, name: string): string {
  const bytes = Uint8Array.from(namespace.replaceAll('-', '').match(/../g) ?? [], (pair) =>
    Number.parseInt(pair, 16),
  )
  const hash = sha1([...bytes, ...utf8(name)]).slice(0, 16)
  hash[6] = (hash[6]! & 0x0f) | 0x50
  hash[8] = (hash[8]! & 0x3f) | 0x80
  const hex = hash.map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}

/** Without the browser's encoder, which a pure room does not have; half a surrogate pair becomes U+FFFD as there. */
function utf8(text: string): number[] {
  return [...text].flatMap((character) => {
    const code = character.codePointAt(0)!
    const point = code >= 0xd800 && code <= 0xdfff ? 0xfffd : code
    if (point < 0x80) return [point]
    if (point < 0x800) return [0xc0 | (point >> 6), 0x80 | (point & 63)]
    if (point < 0x10000) return [0xe0 | (point >> 12), tail(point, 6), tail(point, 0)]
    return [0xf0 | (point >> 18), tail(point, 12), tail(point, 6), tail(point, 0)]
  })
}

const tail = (point: number, shift: number): number => 0x80 | ((point >> shift) & 63)
