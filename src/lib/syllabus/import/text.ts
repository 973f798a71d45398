/** Plain text and Markdown -> blocks. */
import { readHeadingWord, readMark } from './marks'
import { joined, wordsIn } from './pdf/paragraphs'
import { splitRow, tableBlocks } from './tables'
import type { Block, Mark, Place } from './types'

/** As it comes along when a document is copied. */
const PAGE = /^page \d{1,4}(?: (?:of|\/) \d{1,4})?$/i

/** Never throws. Headings of Markdown, both kinds of list and tables with bars; else lines as they are. */
export function textBlocks(source: string): Block[] {
  const kept = source
    .replace(/\r\n?/g, '\n')
    .split('\n')
    .map((line, i) => ({ line, number: i + 1 }))
    .filter(({ line }) => !PAGE.test(line.trim()))
  const lines = kept.map(({ line }) => line)
  const numbers = kept.map(({ number }) => number)
  const blocks: Block[] = []
  const words = wordsIn(lines.map((line) => line.trim()))
  let before: Mark | undefined
  for (let i = 0; i < lines.length; i += 1) {
    const line = lines[i]!
    const text = plain(line)
    const place: Place = { kind: 'line', number: numbers[i]! }
    if (text === '' || /^([-*_=~`]\s*){3,}\w*$/.test(text)) continue
    const hashes = /^ {0,3}(#{1,6})\s+(.*?)\s*#*$/.exec(line)
    if (hashes) blocks.push(heading(plain(hashes[2]!), hashes[1]!.length, place))
    else if (isBarTable(lines, i)) {
      let end = i
      while (end < lines.length && lines[end]!.includes('|')) end += 1
      blocks.push(...barTable(lines.slice(i, end), numbers.slice(i, end)))
      i = end - 1
    } else if (/^ {0,3}(=+|-{3,})\s*$/.test(lines[i + 1] ?? '') && !readMark(text).mark) {
      blocks.push(heading(text, lines[i + 1]!.trim().startsWith('=') ? 1 : 2, place))
      i += 1
    } else {
      const { mark, rest } = readMark(text, before)
      if (mark) before = mark
      const spelt = mark ? undefined : readHeadingWord(text)
      if (spelt)
        blocks.push({
          as: 'heading',
          text: spelt.title,
          mark: { ref: spelt.ref, style: 'number' },
          level: 2,
          place,
        })
      else if (mark) blocks.push({ as: 'text', text: rest, mark, level: nesting(line), place })
      else if (goesOn(blocks, lines, i)) {
        const last = blocks.pop()!
        blocks.push({ ...last, text: joined(last.text, text, words) })
      } else if (isTitleLine(lines, i, text)) blocks.push(heading(text, 2, place))
      else blocks.push({ as: 'text', text, level: 0, place })
    }
  }
  return blocks
}

function heading(text: string, level: number, place: Place): Block {
  const { mark, rest } = readMark(text)
  return mark && mark.style !== 'bullet' && rest !== ''
    ? { as: 'heading', text: rest, mark, level, place }
    : { as: 'heading', text, level, place }
}

/** Without Markdown's signs; what looks like HTML stays as it is, and is shown as text. */
const plain = (line: string): string =>
  line
    .trim()
    .replace(/^>\s?/, '')
    .replace(/!?\[([^\]]{0,500})\]\([^)\s]{0,500}\)/g, '$1')
    .replace(/(\*\*|__)(?=\S)([^*_]{1,2000}?\S?)\1/g, '$2')
    .replace(/(?<![\w*])\*(?=\S)([^*]{1,2000}?\S?)\*(?![\w*])/g, '$1')
    .replace(/`([^`]{1,2000})`/g, '$1')
    .trim()

const nesting = (line: string): number =>
  Math.floor((/^\s*/.exec(line)?.[0].replace(/\t/g, '    ').length ?? 0) / 2)

/** A line that wraps: it begins small, or stands indented under an item, with no empty line between. */
function goesOn(blocks: readonly Block[], lines: readonly string[], i: number): boolean {
  const last = blocks.at(-1)
  const above = lines[i - 1]
  if (last?.as !== 'text' || last.whole || above === undefined || above.trim() === '') return false
  if (last.mark && /^\s{2,}/.test(lines[i]!)) return true
  return /^\p{Ll}/u.test(lines[i]!.trim()) && !/[.!?:;]$/.test(above.trim())
}

/** A short line of its own, with an empty line or the start before it and more below it. */
function isTitleLine(lines: readonly string[], i: number, text: string): boolean {
  const above = (lines[i - 1] ?? '').trim()
  const rest = lines.slice(i + 1, i + 4)
  const below = rest.find((line) => line.trim() !== '')?.trim()
  if (above !== '' || below === undefined) return false
  if (text.length > 80 || /[.!?;,]$/.test(text) || /:$/.test(text)) return false
  const words = text.split(/\s+/).length
  return (
    words <= 9 &&
    (readMark(below).mark !== undefined || /[.!?]$/.test(below)) &&
    /^\P{Ll}/u.test(text)
  )
}

const isBarTable = (lines: readonly string[], i: number): boolean =>
  lines[i]!.includes('|') &&
  /^\s*\|?\s*:?-{2,}:?\s*(\|\s*:?-{2,}:?\s*)*\|?\s*$/.test(lines[i + 1] ?? '') &&
  lines[i + 1]!.includes('-')

function barTable(lines: readonly string[], numbers: readonly number[]): Block[] {
  const rows = lines.flatMap((line, i) =>
    i === 1
      ? []
      : [
          {
            cells: splitRow(line).map((cell) => [{ text: plain(cell) }]),
            place: { kind: 'line', number: numbers[i]! } as Place,
          },
        ],
  )
  return tableBlocks(rows)
}
