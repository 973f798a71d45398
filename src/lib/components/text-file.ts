/** A file that the user chose -> its text, or one plain sentence why not. */

/** Rejects, with a sentence for the user, for a file that is too big, cannot be read or is not text. */
export async function readTextFile(file: File, mostBytes: number): Promise<string> {
  if (file.size > mostBytes)
    throw new Error(
      `${file.name} is ${sizeWords(file.size)}; at most ${sizeWords(mostBytes)} can be read here. Nothing was changed.`,
    )
  const bytes = await bytesOf(file)
  try {
    return decode(bytes)
  } catch {
    throw new Error(
      `${file.name} is not a text file, or not in Unicode (UTF-8). Nothing was changed.`,
    )
  }
}

/** "12 kB", "3.4 MB". */
export function sizeWords(bytes: number): string {
  if (bytes < 1_000_000) return `${Math.max(1, Math.round(bytes / 1000))} kB`
  return `${(bytes / 1_000_000).toFixed(1).replace(/\.0$/, '')} MB`
}

async function bytesOf(file: File): Promise<Uint8Array> {
  try {
    return new Uint8Array(await file.arrayBuffer())
  } catch {
    // A folder that was dropped, or a file that was moved after it was chosen.
    throw new Error(`${file.name} could not be opened. Nothing was changed.`)
  }
}

/** Older editors on Windows save "Unicode" as UTF-16 with a mark in front. */
function decode(bytes: Uint8Array): string {
  const utf16 = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : undefined
  const text = new TextDecoder(utf16 ?? 'utf-8', { fatal: true }).decode(bytes)
  if (text.includes('\0')) throw new TypeError('not text')
  return text
}
