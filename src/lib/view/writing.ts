/** What the blank page says of itself while it is written on. */

/** Words, as a student counts them: runs without blanks that hold a letter or a figure. */
export const countWords = (text: string): number =>
  text.split(/\s+/).filter((run) => /[\p{L}\p{N}]/u.test(run)).length

/** "4:05", "1:04:05". */
export function clockText(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1000))
  const two = (part: number) => String(part).padStart(2, '0')
  const hours = Math.floor(seconds / 3600)
  const minutes = Math.floor(seconds / 60) % 60
  const start = hours > 0 ? `${hours}:${two(minutes)}` : String(minutes)
  return `${start}:${two(seconds % 60)}`
}

/** A file name for the page's text: "longshore-drift.txt". */
export const textFileName = (topicId: string): string => `${topicId || 'my-page'}.txt`
