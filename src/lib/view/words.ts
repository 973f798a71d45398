/** Counts, amounts and lists in words. */

/** "1 point", "2 points". `many` where the plural is not the singular and an s. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString('en-GB')} ${count === 1 ? one : many}`

/** Time spent writing: "less than a minute", "12 minutes", "1 hour 5 minutes". */
export function durationWords(ms: number): string {
  const minutes = Math.round(ms / 60_000)
  if (minutes < 1) return 'less than a minute'
  if (minutes < 60) return counted(minutes, 'minute')
  const rest = minutes % 60
  const hours = counted(Math.floor(minutes / 60), 'hour')
  return rest === 0 ? hours : `${hours} ${counted(rest, 'minute')}`
}

/** "a, b and c". */
export const listed = (items: readonly string[], last = 'and'): string =>
  items.length < 2
    ? items.join('')
    : `${items.slice(0, -1).join(', ')} ${last} ${items[items.length - 1]}`

/** The first letter as a capital. */
export const opening = (sentence: string): string =>
  sentence.charAt(0).toUpperCase() + sentence.slice(1)
