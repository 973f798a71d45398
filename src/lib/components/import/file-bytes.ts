/** A file that was chosen: what is in it, and what a syllabus made of it is called. */

/** A PDF of a thousand scanned pages has more. */
const MOST_BYTES = 150_000_000

export const titleOf = (name: string): string =>
  name
    .replace(/\.[a-z0-9]{1,5}$/i, '')
    .replace(/[_-]+/g, ' ')
    .trim() || 'My syllabus'

/** Rejects with a plain message for one that is too large or cannot be opened. */
export async function bytesOf(file: File): Promise<Uint8Array<ArrayBuffer>> {
  if (file.size > MOST_BYTES)
    throw new Error(
      `${file.name} is ${Math.round(file.size / 1e6)} MB; at most ${MOST_BYTES / 1e6} MB can be read here. Nothing was changed.`,
    )
  try {
    return new Uint8Array(await file.arrayBuffer())
  } catch {
    // A folder that was dropped, or a file that was moved after it was chosen.
    throw new Error(`${file.name} could not be opened. Nothing was changed.`)
  }
}
