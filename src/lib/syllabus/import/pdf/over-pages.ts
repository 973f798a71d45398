/** A table that goes on over the page is one table, and a row that is parted there is one row. */
import type { CellText, TableRow } from '../tables'
import { joined } from './paragraphs'

export interface ReadTable {
  readonly top: number
  /** Where its columns begin and end. */
  readonly xs: readonly number[]
  readonly rows: readonly TableRow[]
}

/** The same columns, as nearly as the same program draws them. */
const NEAR = 6
export const goesOnWith = (above: ReadTable, below: ReadTable): boolean =>
  above.xs.length === below.xs.length && above.xs.every((x, i) => Math.abs(x - below.xs[i]!) < NEAR)

/** Without the header that is printed again. */
export function joinedTable(
  above: ReadTable,
  below: ReadTable,
  words: ReadonlySet<string>,
): ReadTable {
  const again = below.rows[0] && above.rows[0] && textOf(below.rows[0]) === textOf(above.rows[0])
  const [first, ...rest] = again ? below.rows.slice(1) : below.rows
  const last = above.rows.at(-1)
  if (!first) return above
  const rows =
    last && last !== above.rows[0] && goesOn(last, first)
      ? [...above.rows.slice(0, -1), joinedRow(last, first, words), ...rest]
      : [...above.rows, first, ...rest]
  return { ...above, rows }
}

/** Nothing stands where its number would, and what stands beside goes on in the middle of a sentence. */
function goesOn(last: TableRow, first: TableRow): boolean {
  if (cellText(first.cells[0]) !== '' || cellText(last.cells[0]) === '') return false
  return first.cells.some((cell, c) => {
    const [before, after] = [cellText(last.cells[c]), cellText(cell)]
    return before !== '' && after !== '' && (/^\p{Ll}/u.test(after) || !/[.!?:;]$/.test(before))
  })
}

const joinedRow = (last: TableRow, first: TableRow, words: ReadonlySet<string>): TableRow => ({
  ...last,
  cells: last.cells.map((cell, c): readonly CellText[] => {
    const [next, ...rest] = first.cells[c] ?? []
    const end = cell.at(-1)
    if (!next || !end) return [...cell, ...(first.cells[c] ?? [])]
    if (next.mark) return [...cell, next, ...rest]
    return [...cell.slice(0, -1), { ...end, text: joined(end.text, next.text, words) }, ...rest]
  }),
})

const cellText = (cell: readonly CellText[] = []): string =>
  cell
    .map(({ text, mark }) => `${mark?.ref ?? ''} ${text}`)
    .join(' ')
    .trim()
const textOf = ({ cells }: TableRow): string => cells.map(cellText).join('|')
