/** A long paragraph holds several points: each of its sentences is one. */

/** Up to here a paragraph is taken for one point. */
const ONE_POINT = 200

export function sentencesOf(text: string): string[] {
  if (text.length <= ONE_POINT) return [text]
  // Not after an initial or a short form such as "e.g.", and not before a small letter.
  return text
    .split(/(?<=[^\s.]{3}[.!?]["”’)]*)\s+(?=["“‘(]?[\p{Lu}\d])/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '')
}
