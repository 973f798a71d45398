/** Printed lines -> paragraphs: wrapped lines and hyphenated words are joined, also from one column or page to the next. */
import { readMark } from '../marks'
import type { Mark } from '../types'
import type { Line } from './types'

export interface Paragraph {
  readonly text: string
  readonly mark?: Mark
  readonly lines: readonly Line[]
}

export interface Print {
  /** Words of the whole document in small letters: they tell how a word that was parted is written. */
  readonly words: ReadonlySet<string>
  /** The usual distance from line to line, in sizes of the type. */
  readonly leading: number
}

export function printOf(lines: readonly Line[]): Print {
  const words = wordsIn(lines.map(({ text }) => text))
  const steps = lines
    .flatMap((line, i) => {
      const before = lines[i - 1]
      const step =
        before && before.page === line.page && before.size === line.size
          ? (line.y - before.y) / line.size
          : 0
      return step > 0.9 && step < 2.5 ? [step] : []
    })
    .sort((a, b) => a - b)
  return { words, leading: steps[Math.floor(steps.length * 0.4)] ?? 1.2 }
}

export function paragraphsOf(lines: readonly Line[], print: Print): Paragraph[] {
  const groups: Line[][] = []
  for (const line of lines) {
    const group = groups.at(-1)
    if (group && goesOn(group, line, print)) group.push(line)
    else groups.push([line])
  }
  let before: Mark | undefined
  return groups.map((group) => {
    const text = group.reduce((sum, { text: next }) => joined(sum, next, print.words), '')
    const { mark, rest } = readMark(text, before)
    if (mark && mark.style !== 'bullet') before = mark
    return { text: rest, lines: group, ...(mark ? { mark } : {}) }
  })
}

function goesOn(group: readonly Line[], line: Line, { leading }: Print): boolean {
  const first = group[0]!
  const last = group.at(-1)!
  if (line.bold !== last.bold || Math.abs(line.size - last.size) > last.size * 0.08) return false
  const ended = /[.!?:;]["”’)]?$/.test(last.text)
  const full = last.x1 > last.right - (last.right - last.left) * 0.2
  const { mark } = readMark(line.text)
  const broken = /\p{L}[-\u00ad]$/u.test(last.text)
  if (
    mark &&
    !(broken && /^\p{Ll}{2}/u.test(line.text)) &&
    beginsAnew(mark, first, line, ended, full)
  )
    return false
  const small = /^[\p{Ll}(]/u.test(line.text)
  const down = line.page === last.page ? line.y - last.y : -1
  // Over the end of a column or a page only what is plainly unfinished goes on.
  if (down <= 0) return !ended && (small || (full && !mark)) && !isAlone(last)
  if (down > leading * 1.35 * line.size) return false
  if (broken) return true
  const back = line.x0 < first.x0 - 3
  return !back && (full || small) && !(ended && !full)
}

// A wrapped line may begin with a number ("see section | 3.1"): it then stands under the text, not under the mark.
function beginsAnew(mark: Mark, first: Line, line: Line, ended: boolean, full: boolean): boolean {
  if (mark.style !== 'number') return true
  return line.x0 <= first.x0 + 2 || ended || !full
}

/** A heading or a cell: a line of its own that does not reach across. */
const isAlone = ({ x1, left, right }: Line): boolean => x1 < right - (right - left) * 0.3

/** Words of printed lines in small letters; the second half of a parted word is none. */
export const wordsIn = (lines: readonly string[]): Set<string> =>
  new Set(
    lines.flatMap((text, i) => {
      const whole = /\p{L}[-\u00ad]$/u.test(lines[i - 1] ?? '')
        ? text.replace(/^[\p{L}-]+/u, '')
        : text
      return whole.toLowerCase().match(/[\p{L}-]+/gu) ?? []
    }),
  )

/**
 * A hyphen at the end of a line stays where the document has the word with it elsewhere, or each half as a word of its
 * own and never both in one: "low-|water".
 */
export function joined(text: string, next: string, words: ReadonlySet<string>): string {
  if (text === '') return next
  if (text.endsWith('\u00ad')) return text.slice(0, -1) + next
  const [, start] = /([\p{L}-]*\p{L})-$/u.exec(text) ?? []
  const [end] = /^\p{Ll}[\p{L}]*/u.exec(next) ?? []
  if (start === undefined || end === undefined)
    return /[\p{L}\d][-–/]$/u.test(text) ? text + next : `${text} ${next}`
  const hyphened = `${start}-${end}`.toLowerCase()
  const plain = `${start}${end}`.toLowerCase()
  if (words.has(plain)) return text.slice(0, -1) + next
  const halves = [start, end].every((half) => half.length > 2 && words.has(half.toLowerCase()))
  return words.has(hyphened) || halves ? text + next : text.slice(0, -1) + next
}
