/** The bytes of a file -> what it is, by its first bytes; and its text, whatever it is encoded in. */

export type FileKind = 'pdf' | 'docx' | 'text'

/** Rejects with what to do for a file of a kind that is known and cannot be read. */
export function kindOfFile(name: string, bytes: Uint8Array): FileKind {
  const head = String.fromCharCode(...bytes.subarray(0, 1024))
  if (head.includes('%PDF-')) return 'pdf'
  if (head.startsWith('PK')) {
    if (/\.(?:xlsx|ods|pptx|odt|odp|pages|numbers|epub|zip)$/i.test(name))
      throw new Error(
        `${name} is none of the kinds that are read here. ${/\.(?:xlsx|ods|numbers)$/i.test(name) ? 'Save the table as CSV' : 'Save it as .docx or PDF'} and bring that.`,
      )
    return 'docx'
  }
  if (head.startsWith('\u00d0\u00cf\u0011\u00e0'))
    throw new Error(
      `${name} is an old Word file (.doc), or one with a password. Save it as .docx without a password, and bring that.`,
    )
  if (head.startsWith('{\\rtf'))
    throw new Error(`${name} is a rich text file (.rtf). Save it as .docx, and bring that.`)
  if (/^(?:\u0089PNG|\u00ff\u00d8\u00ff|GIF8|RIFF|II\*|MM\0\*)/.test(head))
    throw new Error(
      `${name} is a picture: there is no text in it to read. Bring the document it was taken from, or type the points in.`,
    )
  if (/^\s*(?:<!doctype html|<html)/i.test(head))
    throw new Error(
      `${name} is a web page. Open it, copy the part with the points, and paste it here.`,
    )
  if (/\.pdf$/i.test(name))
    throw new Error(
      `${name} does not begin as a PDF does: it is damaged, or something else. Load it down once more.`,
    )
  if (/\.docx$/i.test(name))
    throw new Error(
      `${name} does not begin as a Word file does: it is damaged, or something else. Save it once more as .docx.`,
    )
  return 'text'
}

export interface Decoded {
  readonly text: string
  /** Where it was not Unicode: what it was taken for. */
  readonly taken?: string
}

/** undefined where it is no text at all. */
export function decodeText(bytes: Uint8Array): Decoded | undefined {
  const [a, b] = bytes
  const wide =
    a === 0xff && b === 0xfe
      ? 'utf-16le'
      : a === 0xfe && b === 0xff
        ? 'utf-16be'
        : wideWithoutMark(bytes)
  if (wide) return asText(decode(wide, bytes))
  const unicode = decode('utf-8', bytes)
  if (unicode !== undefined) return asText(unicode)
  const text = decode('windows-1252', bytes)
  return text === undefined ? undefined : asText(text, 'Windows-1252 (Western European)')
}

/** Without a mark in front: every second byte of Latin text is nought. */
function wideWithoutMark(bytes: Uint8Array): string | undefined {
  const head = bytes.subarray(0, 400)
  if (head.length < 8) return undefined
  const zeros = [0, 0]
  head.forEach((byte, i) => {
    if (byte === 0) zeros[i % 2]! += 1
  })
  if (zeros[1]! > head.length * 0.35 && zeros[0] === 0) return 'utf-16le'
  return zeros[0]! > head.length * 0.35 && zeros[1] === 0 ? 'utf-16be' : undefined
}

function decode(encoding: string, bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes)
  } catch {
    return undefined
  }
}

function asText(text: string | undefined, taken?: string): Decoded | undefined {
  if (text === undefined) return undefined
  const controls =
    // eslint-disable-next-line no-control-regex
    text.slice(0, 20_000).match(/[\u0000-\u0008\u000e-\u001a\u001c-\u001f]/g)?.length ?? 0
  if (text.includes('\0') || controls > Math.min(text.length, 20_000) * 0.02) return undefined
  return { text, ...(taken === undefined ? {} : { taken }) }
}
