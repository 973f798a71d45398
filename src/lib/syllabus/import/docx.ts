/** The document as mammoth reads it from a DOCX file -> blocks. Its model comes untyped, from a file: nothing is taken on trust. */
import { readHeadingWord, readMark } from './marks'
import { tableBlocks, type CellText, type TableRow } from './tables'
import type { Block, Mark, Place } from './types'

interface Paragraph {
  readonly text: string
  readonly mark?: Mark
  readonly level: number
  /** From its style; a bold line of its own is one where no style is used. */
  readonly heading?: number
  readonly bold: boolean
}

type Node = Readonly<Record<string, unknown>>

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null
const childrenOf = (node: Node): readonly Node[] =>
  Array.isArray(node['children']) ? node['children'].filter(isNode) : []

/** Deeper tables within tables are no syllabus. */
const DEEPEST = 12

export function docxBlocks(document: unknown): Block[] {
  if (!isNode(document)) return []
  const counter = listCounter()
  const blocks: Block[] = []
  let number = 0
  for (const child of childrenOf(document)) {
    number += 1
    const place: Place = { kind: 'paragraph', number }
    if (child['type'] === 'paragraph') {
      const paragraph = readParagraph(child, counter)
      if (paragraph.text !== '') blocks.push(blockOf(paragraph, place))
    } else if (child['type'] === 'table')
      blocks.push(...tableBlocks(rowsOf(child, place, counter, 0)))
  }
  return withBoldHeadings(blocks)
}

const blockOf = (
  { text, mark, level, heading, bold }: Paragraph,
  place: Place,
): Block & { bold?: boolean } => ({
  as: heading === undefined ? 'text' : 'heading',
  text,
  ...(mark ? { mark } : {}),
  level: heading ?? level,
  place,
  ...(bold && heading === undefined ? { bold } : {}),
})

/** Teachers often make a heading by making a line bold. */
function withBoldHeadings(blocks: readonly (Block & { bold?: boolean })[]): Block[] {
  return blocks.map(({ bold, ...block }) => {
    const short = block.text.length <= 100 && !/[.;,:]$/.test(block.text)
    const fits = bold && short && block.mark?.style !== 'bullet'
    return fits ? { ...block, as: 'heading' as const, level: 8 } : block
  })
}

function rowsOf(table: Node, place: Place, counter: Counter, depth: number): TableRow[] {
  if (depth > DEEPEST) return []
  return childrenOf(table).map((row) => ({
    place,
    cells: childrenOf(row).map((cell) =>
      childrenOf(cell).flatMap((child): CellText[] => {
        if (child['type'] === 'table')
          return rowsOf(child, place, counter, depth + 1).flatMap(({ cells }) => cells.flat())
        const { text, mark, level, heading } = readParagraph(child, counter)
        return text === ''
          ? []
          : [
              {
                text,
                level,
                ...(mark ? { mark } : {}),
                ...(heading === undefined ? {} : { heading: true }),
              },
            ]
      }),
    ),
  }))
}

function readParagraph(node: Node, counter: Counter): Paragraph {
  const runs = { text: '', bold: 0, all: 0 }
  gather(node, runs, false, 0)
  const text = runs.text.replace(/\s+/g, ' ').trim()
  const heading = headingOf(node)
  const numbering = isNode(node['numbering']) ? node['numbering'] : undefined
  const bold = runs.all > 0 && runs.bold >= runs.all * 0.9
  if (text === '') return { text, level: 0, bold }
  const spelt = readHeadingWord(text)
  if (heading !== undefined && spelt)
    return { text: spelt.title, mark: { ref: spelt.ref, style: 'number' }, level: 0, heading, bold }
  const { mark, rest } = readMark(text)
  if (mark && rest !== '')
    return {
      text: rest,
      mark,
      level: Number(numbering?.['level'] ?? 0) || 0,
      bold,
      ...(heading === undefined ? {} : { heading }),
    }
  if (!numbering) {
    if (heading !== undefined) counter.restart()
    return { text, level: 0, bold, ...(heading === undefined ? {} : { heading }) }
  }
  const level = Math.min(Math.max(Number(numbering['level']) || 0, 0), 8)
  if (heading !== undefined) {
    counter.restart()
    return { text, mark: counter.heading(level), level, heading, bold }
  }
  return {
    text,
    mark: numbering['isOrdered'] === true ? counter.item(level) : { ref: '', style: 'bullet' },
    level,
    bold,
  }
}

function headingOf({ styleName, styleId }: Node): number | undefined {
  const name =
    typeof styleName === 'string' ? styleName : typeof styleId === 'string' ? styleId : ''
  if (/^title$/i.test(name)) return 1
  const found = /^heading\s*([1-9])$/i.exec(name)
  return found ? Number(found[1]) + 1 : undefined
}

function gather(
  node: Node,
  into: { text: string; bold: number; all: number },
  bold: boolean,
  depth: number,
): void {
  if (depth > 30) return
  for (const child of childrenOf(node)) {
    const own = bold || child['isBold'] === true
    if (child['type'] === 'text' && typeof child['value'] === 'string') {
      into.text += child['value']
      const length = child['value'].trim().length
      into.all += length
      if (own) into.bold += length
    } else if (child['type'] === 'tab' || child['type'] === 'break') into.text += ' '
    else gather(child, into, own, depth + 1)
  }
}

interface Counter {
  /** A new list begins. */
  readonly restart: () => void
  readonly item: (level: number) => Mark
  readonly heading: (level: number) => Mark
}

/** Word counts its lists itself and the file does not say to what: 1, (a), (i) by how deep an item is nested. */
function listCounter(): Counter {
  let items: number[] = []
  let headings: number[] = []
  const next = (counts: number[], level: number) => {
    const kept = counts.slice(0, level + 1)
    while (kept.length <= level) kept.push(0)
    kept[level] = (kept[level] ?? 0) + 1
    return kept
  }
  return {
    restart: () => (items = []),
    heading(level) {
      headings = next(headings, level)
      return { ref: headings.map((n) => Math.max(n, 1)).join('.'), style: 'number' }
    },
    item(level) {
      items = next(items, level)
      const n = items[level]!
      if (level === 0) return { ref: String(n), style: 'number' }
      return level % 2 === 1
        ? { ref: String.fromCharCode(97 + ((n - 1) % 26)), style: 'letter' }
        : { ref: roman(n), style: 'roman' }
    },
  }
}

const ROMAN = ['', 'i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix']
const roman = (n: number): string =>
  `${'x'.repeat(Math.min(Math.floor(n / 10), 20))}${ROMAN[n % 10]}`
