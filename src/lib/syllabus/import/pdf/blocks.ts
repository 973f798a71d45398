/** Pages of a PDF -> blocks. */
import { readHeadingWord } from '../marks'
import { tableBlocks, type CellText, type TableRow } from '../tables'
import type { Block, DraftWarning, Place } from '../types'
import { inReadingOrder } from './columns'
import { footnotesOf } from './footnotes'
import { furnitureOf } from './furniture'
import { goesOnWith, joinedTable, type ReadTable } from './over-pages'
import { joined, paragraphsOf, printOf, type Paragraph, type Print } from './paragraphs'
import { ruledTables, type RuledTable } from './ruled-tables'
import { segmentsOf } from './segments'
import type { Line, PdfPage, Segment } from './types'
export type { PdfItem, PdfPage, PdfRule } from './types'

export interface PdfBlocks {
  readonly blocks: readonly Block[]
  readonly warnings: readonly DraftWarning[]
  /** Pages with no text on them, in order: scanned ones, or empty ones. */
  readonly empty: readonly number[]
}

/** `beside` are pages that are not wanted and tell what is printed on every page. */
export function pdfBlocks(pages: readonly PdfPage[], beside: readonly PdfPage[] = []): PdfBlocks {
  const all = [...pages, ...beside].map((page) => ({ page, segments: segmentsOf(page) }))
  const { isFurniture, heads } = furnitureOf(all)
  const read = pages.map((whole) => {
    const { page, notes } = footnotesOf(whole, isFurniture)
    const { tables, outside } = ruledTables(page)
    const lines = inReadingOrder(
      segmentsOf({ ...page, items: outside }).filter((segment) => !isFurniture(segment)),
    )
    return { page, tables, lines, notes }
  })
  const every = read.flatMap(({ lines }) => lines)
  const print = printOf(every)
  const levelOf = headingLevels(
    every,
    read.flatMap(({ tables }) => tables),
  )
  // What stands above a table is read before it, what stands below after it.
  const blocks: Block[] = []
  let waiting: Line[] = []
  const flush = () => {
    blocks.push(...paragraphsOf(waiting, print).map((paragraph) => blockOf(paragraph, levelOf)))
    waiting = []
  }
  // The last table so far, for as long as nothing stands below it.
  let open: ReadTable | undefined
  const endTable = () => {
    if (open) blocks.push(...tableBlocks(open.rows))
    open = undefined
  }
  for (const { page, tables, lines } of read) {
    let rest = lines
    for (const { top, xs, rows } of tables) {
      const table = { top, xs, rows: rowsOf(rows, page, print) }
      const above = rest.filter(({ y }) => y < top)
      rest = rest.filter(({ y }) => y >= top)
      if (open && above.length === 0 && goesOnWith(open, table)) {
        open = joinedTable(open, table, print.words)
        continue
      }
      endTable()
      waiting.push(...above)
      flush()
      open = table
    }
    if (rest.length > 0) endTable()
    waiting.push(...rest)
  }
  endTable()
  flush()
  blocks.push(...read.flatMap(({ notes }) => notes.flatMap((note) => noteBlock(note, print))))
  const dropped = heads.slice(0, 3).map((head) => `“${head.slice(0, 60)}”`)
  return {
    blocks,
    warnings:
      dropped.length > 0
        ? [{ message: `Left out, because it is printed on every page: ${dropped.join(', ')}.` }]
        : [],
    empty: pages
      .filter(({ items }) => !items.some(({ text }) => text.trim() !== ''))
      .map(({ number }) => number),
  }
}

function blockOf(
  { text, mark, lines }: Paragraph,
  levelOf: (lines: readonly Line[], text: string, bullet: boolean) => number | undefined,
): Block {
  const first = lines[0]!
  const place: Place = { kind: 'page', number: first.page }
  if (/(?:\.\s?){4,}\s*\d+$/.test(text))
    return { as: 'text', text, level: 0, place, out: 'A line of the contents' }
  const heading = levelOf(lines, text, mark?.style === 'bullet')
  const spelt = heading !== undefined && !mark ? readHeadingWord(text) : undefined
  if (spelt)
    return {
      as: 'heading',
      text: spelt.title,
      mark: { ref: spelt.ref, style: 'number' },
      level: heading!,
      place,
    }
  return {
    as: heading === undefined ? 'text' : 'heading',
    text,
    ...(mark ? { mark } : {}),
    level: heading ?? Math.max(0, Math.round((first.x0 - first.left) / 18)),
    place,
  }
}

/** Larger or bolder than the body of the document; the level is the rank of the size. */
function headingLevels(lines: readonly Line[], tables: readonly RuledTable[]) {
  const letters = new Map<string, number>()
  const style = (size: number, bold: boolean) => `${Math.round(size * 2) / 2} ${bold ? 'b' : ''}`
  const count = (size: number, bold: boolean, text: string) =>
    letters.set(style(size, bold), (letters.get(style(size, bold)) ?? 0) + text.length)
  for (const { size, bold, text } of lines) count(size, bold, text)
  for (const item of tables.flatMap(({ rows }) => rows.flat(2)))
    count(item.size, item.bold, item.text)
  const body = [...letters].sort((a, b) => b[1] - a[1])[0]?.[0] ?? ''
  const bodySize = Number.parseFloat(body)
  const bodyBold = body.endsWith('b')
  const isHeading = ({ size, bold }: Line, text: string): boolean => {
    const larger = size >= bodySize * 1.12
    const bolder = bold && !bodyBold && size >= bodySize * 0.9
    return (
      (larger || bolder) &&
      text.length <= 160 &&
      !/[.;,]$/.test(text) &&
      !(bolder && !larger && /:$/.test(text))
    )
  }
  const sizes = [
    ...new Set(
      lines.filter((line) => isHeading(line, line.text)).map(({ size, bold }) => style(size, bold)),
    ),
  ].sort((a, b) => Number.parseFloat(b) - Number.parseFloat(a) || b.length - a.length)
  return (of: readonly Line[], text: string, bullet: boolean): number | undefined => {
    const first = of[0]!
    if (bullet || text === '' || !isHeading(first, text)) return undefined
    return Math.max(1, sizes.indexOf(style(first.size, first.bold)) + 1)
  }
}

/** It stands at the end, left out: what it says belongs to a point, and is none. */
function noteBlock(lines: readonly Segment[], { words }: Print): Block[] {
  const [first] = lines
  const text = lines.reduce((sum, { text: next }) => joined(sum, next, words), '')
  return first
    ? [
        {
          as: 'text',
          text,
          level: 0,
          place: { kind: 'page', number: first.page },
          out: 'A footnote',
        },
      ]
    : []
}

function rowsOf(rows: RuledTable['rows'], { number }: PdfPage, print: Print): TableRow[] {
  return rows.map((cells) => ({
    place: { kind: 'page', number },
    cells: cells.map((items): CellText[] => {
      const segments = segmentsOf({ items, number })
      const left = Math.min(...segments.map(({ x0 }) => x0))
      const right = Math.max(...segments.map(({ x1 }) => x1))
      return paragraphsOf(
        segments.map((segment) => ({ ...segment, left, right })),
        print,
      ).map(({ text, mark, lines }) => ({
        text,
        ...(mark ? { mark } : {}),
        level: Math.max(0, Math.round((lines[0]!.x0 - left) / 18)),
      }))
    }),
  }))
}
