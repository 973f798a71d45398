/** A table of values (CSV, TSV) -> a draft. Source of the format: RFC 4180. */
import Papa from 'papaparse'
import { unmarked } from '../spreadsheet'
import { FURTHER, usesByContent, usesByName, type ColumnUse } from './columns'
import { readPointFields } from './point-fields'
import { treeFrom } from './tree'
import { MOST_LINES, type DraftLine, type DraftRead, type DraftWarning, type Place } from './types'

export interface Table {
  readonly rows: readonly (readonly string[])[]
  /** The number of each row in the file, from 1. */
  readonly numbers: readonly number[]
  readonly header: boolean
  /** What each column holds, as far as it can be told. */
  readonly uses: readonly ColumnUse[]
}

export type TableRead =
  | { readonly ok: true; readonly table: Table }
  | { readonly ok: false; readonly fault: string; readonly place?: Place }

const MOST_COLUMNS = 50
const MOST_CELL = 20_000

/** Never throws. Reading stops where there are more rows than a syllabus can have. */
export function readTable(source: string): TableRead {
  const rows: string[][] = []
  const numbers: number[] = []
  let number = 0
  let refused: { fault: string; place: Place } | undefined
  const text = source.replace(/^\ufeff/, '')
  Papa.parse<string[]>(text, {
    delimiter: delimiterOf(text),
    step: ({ data, errors }, parser) => {
      number += 1
      const place: Place = { kind: 'row', number }
      const quotes = errors.find(({ type }) => type === 'Quotes')
      if (quotes)
        refused = {
          fault: `Row ${number} has a quotation mark that is not closed or stands in the middle of a cell. Correct the row and bring the table again.`,
          place,
        }
      else if (data.length > MOST_COLUMNS)
        refused = {
          fault: `Row ${number} has ${data.length} columns; at most ${MOST_COLUMNS} are read.`,
          place,
        }
      else if (data.some((cell) => cell.length > MOST_CELL))
        refused = {
          fault: `Row ${number} has a cell of more than ${MOST_CELL} characters: no point is as long.`,
          place,
        }
      else if (rows.length > MOST_LINES)
        refused = {
          fault: `The table has more than ${MOST_LINES} rows: too many for one syllabus. Bring one subject at a time.`,
          place,
        }
      else if (data.some((cell) => cell.trim() !== '')) {
        // A table of our own has a ' in front of what a spreadsheet would run.
        rows.push(data.map(unmarked))
        numbers.push(number)
      }
      if (refused) parser.abort()
    },
  })
  if (refused) return { ok: false, ...refused }
  if (rows.length === 0)
    return { ok: false, fault: 'The table is empty: look whether this is the file you meant.' }
  const named = usesByName(rows[0]!)
  return {
    ok: true,
    table: { rows, numbers, header: named !== undefined, uses: named ?? usesByContent(rows) },
  }
}

/** The sign that parts the first lines into the most cells. */
export function delimiterOf(text: string): string {
  const head = text.slice(0, 5000).split(/\r?\n/).slice(0, 10)
  const count = (sign: string) =>
    head.reduce((sum, line) => sum + line.replace(/"[^"]*"/g, '').split(sign).length - 1, 0)
  return ['\t', ';', ','].reduce((best, sign) => (count(sign) > count(best) ? sign : best), ',')
}

/** `uses` as the user chose them. Ideas in one cell stand on lines of their own, or with semicolons between. */
export function tableTree(table: Table, uses: readonly ColumnUse[], title: string): DraftRead {
  const warnings: DraftWarning[] = []
  const lines: DraftLine[] = []
  let topic = ''
  let topics = 0
  let inTopic = 0
  table.rows.forEach((row, i) => {
    if (table.header && i === 0) return
    const cell = (use: ColumnUse) => (row[uses.indexOf(use)] ?? '').trim()
    const place: Place = { kind: 'row', number: table.numbers[i] ?? i + 1 }
    const head = cell('topic')
    if (head !== '' && head !== topic) {
      topic = head
      topics += 1
      inTopic = 0
      const caution = cell('caution')
      lines.push({
        key: lines.length,
        role: 'topic',
        ref: '',
        text: head.replace(/\s+/g, ' '),
        depth: 1,
        place,
        ...(caution ? { caution } : {}),
      })
    }
    const text = cell('text')
    if (text === '') {
      if (cell('ref') !== '')
        warnings.push({ message: 'This row has a number and no text: it was left out.', place })
      return
    }
    inTopic += 1
    const read = readPointFields(fieldsOf(cell))
    if (!read.ok)
      warnings.push({ message: `Its further columns were not taken. ${read.message}`, place })
    const ref = cell('ref')
    const line: DraftLine = {
      key: lines.length,
      role: 'point',
      ref: ref || `${Math.max(topics, 1)}.${inTopic}`,
      text,
      place,
    }
    lines.push({
      ...line,
      ...(ref === '' ? { counted: true } : {}),
      ...(read.ok && read.more ? { more: read.more } : {}),
    })
  })
  return treeFrom(lines, title, warnings.slice(0, 100))
}

function fieldsOf(cell: (use: ColumnUse) => string): Record<string, unknown> {
  const fields: Record<string, unknown> = {}
  const list = (text: string) => text.split(/\n/).flatMap((line) => parts(line))
  const ideas = list(cell('ideas'))
  if (ideas.length > 0) fields['ideas'] = ideas
  for (const field of FURTHER) {
    const text = cell(field)
    if (text === '' || field === 'caution') continue
    if (field === 'any') fields[field] = /^\d+$/.test(text) ? Number(text) : text
    else if (field === 'reject' || field === 'steps')
      fields[field] = text
        .split(/\n/)
        .map((line) => line.trim())
        .filter((line) => line !== '')
    else if (field === 'where')
      fields[field] = Object.fromEntries(
        text.split(/\n/).map((line) => {
          const at = line.indexOf(':')
          return [line.slice(0, at).trim(), line.slice(at + 1).trim()]
        }),
      )
    else fields[field] = text
  }
  return fields
}

/** A semicolon within quotation marks or brackets parts nothing. */
const parts = (line: string): string[] =>
  line
    .split(/;(?=(?:[^"]*"[^"]*")*[^"]*$)/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
