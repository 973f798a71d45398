/** The number, letter or bullet that a line begins with. */
import type { Mark } from './types'

// Symbol fonts give their bullets as private characters; dashes are bullets only with a space after them.
const BULLET = /^[•◦▪▫●○■□‣⁃∙·➢➤►▶✓✔❖◆\uf000-\uf0ff*–—-](?:\s+|$)/u
const CODED =
  /^((?:[A-Z]{1,4}[.-]?)?\d{1,3}(?:[.-]\d{1,3}){1,5}[a-z]?|[A-Z]{1,4}[.-]?\d{1,3}[a-z]?)[.):]?(?:\s*\(([a-z])\)(?:\s*\(([ivx]{1,5})\))?)?(?:\s+|$)/
const WHOLE = /^\(?(\d{1,3})(?:[.)](?:\s+|$)|\s+(?=["“'‘(]?\p{Lu}))/u
const ROMAN = /^\(?([ivx]{1,6})[.)](?:\s+|$)/
const LETTER = /^(?:\(([a-zA-Z])\)|([a-zA-Z])[.)])(?:\s+|$)/

/** A line as its mark and the rest. `before` is the mark of the same depth before it: after (h), (i) is a letter. */
export function readMark(
  line: string,
  before?: Mark,
): { readonly mark?: Mark; readonly rest: string } {
  const text = line.trim()
  const found = (mark: Mark, all: string) => ({ mark, rest: text.slice(all.length).trim() })
  const bullet = BULLET.exec(text)
  if (bullet) return found({ ref: '', style: 'bullet' }, bullet[0])
  const coded = CODED.exec(text)
  if (coded && !isQuantity(text, coded[0])) {
    const [all, number = '', letter, roman] = coded
    const ref = `${number}${letter ? `(${letter})` : ''}${roman ? `(${roman})` : ''}`
    return found({ ref, style: 'number' }, all)
  }
  const whole = WHOLE.exec(text)
  if (whole) return found({ ref: whole[1]!, style: 'number' }, whole[0])
  const roman = ROMAN.exec(text)
  if (roman && !(before?.style === 'letter' && follows(before.ref, roman[1]!)))
    return found({ ref: roman[1]!, style: 'roman' }, roman[0])
  const letter = LETTER.exec(text)
  if (letter) return found({ ref: (letter[1] ?? letter[2])!, style: 'letter' }, letter[0])
  return { rest: text }
}

/** The whole of a cell is a number or a code: `3.1`, `(a)`, `B2.1`. */
export function isRef(cell: string): boolean {
  const text = cell.trim()
  if (text === '' || text.length > 20) return false
  const { mark, rest } = readMark(text)
  return (mark !== undefined && mark.style !== 'bullet' && rest === '') || /^\d{1,3}$/.test(text)
}

const follows = (a: string, b: string): boolean =>
  b.length === 1 && b.charCodeAt(0) === a.charCodeAt(0) + 1

// "2.5 cm of rain" begins with no point's number.
const isQuantity = (text: string, mark: string): boolean =>
  /^\d+\.\d+\s+$/.test(mark) &&
  /^(?:%|°|(?:mm|cm|m|km|g|kg|s|h|min|ml|l|N|J|Pa|Hz|mol|years?|hours?|days?|metres?|million|billion|times)(?=[\s,.;)]|$))/.test(
    text.slice(mark.length),
  )

/** "Topic 3: Waves" says itself that it is a heading. */
export function readHeadingWord(
  text: string,
): { readonly ref: string; readonly title: string } | undefined {
  const found =
    /^(?:topic|unit|section|chapter|module|part|theme|component|paper)\s+(\d+(?:\.\d+)*|[A-Z]|[IVX]+)\s*(?:[:.–—-]\s*|\s+(?=\p{Lu}))(\S.*)$/iu.exec(
      text,
    )
  return found ? { ref: found[1]!, title: found[2]! } : undefined
}
