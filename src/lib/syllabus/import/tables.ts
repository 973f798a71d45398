/** The table of a document -> blocks: a row is a point, or a heading where it has one cell only. */
import { usesByContent, usesByName } from './columns'
import { isRef, readMark } from './marks'
import type { Block, Mark, Place } from './types'

/** A paragraph within a cell. */
export interface CellText {
  readonly text: string
  readonly mark?: Mark
  readonly level?: number
  readonly heading?: boolean
}

export interface TableRow {
  readonly cells: readonly (readonly CellText[])[]
  readonly place: Place
}

export function tableBlocks(rows: readonly TableRow[]): Block[] {
  const texts = rows.map(({ cells }) => cells.map(cellText))
  const width = texts.reduce((most, row) => Math.max(most, row.length), 0)
  // A table of one column, or of one row, lays a page out.
  if (width < 2)
    return rows.flatMap(({ cells, place }) => cells.flatMap((cell) => flow(cell, place)))
  const named = usesByName(texts[0] ?? [])
  const header = named ? texts[0]! : []
  const uses = named ?? usesByContent(texts)
  let topic = ''
  return rows.slice(named ? 1 : 0).flatMap(({ cells, place }): Block[] => {
    const filled = cells.filter((cell) => cellText(cell) !== '')
    if (filled.length === 0) return []
    const at = (use: string) => cells[uses.indexOf(use as never)] ?? []
    const main = at('text')
    const ref = cellText(at('ref'))
    if (filled.length === 1 && filled[0] !== main) return ownRow(filled[0]!, place)
    const head = cellText(at('topic'))
    const heading: Block[] = head !== '' && head !== topic ? [headingOf(head, place)] : []
    if (head !== '') topic = head
    const rest = cells.flatMap((cell, c): Block[] =>
      uses[c] !== 'out' || !saysSomething(cellText(cell))
        ? []
        : [
            {
              as: 'text',
              text: cellText(cell),
              level: 0,
              place,
              out: `It stands in the column ${header[c]?.trim() ? `“${header[c].trim()}”` : c + 1}`,
            },
          ],
    )
    const terms = !named && ref === '' && uses.indexOf('ref') === -1 && width === 2
    if (terms) return [...heading, termBlock(cells, place)]
    return [...heading, ...withRef(flow(main, place), ref), ...rest]
  })
}

/** A tick, a mark or the number of an objective says nothing. */
const saysSomething = (text: string): boolean => text.length > 4 && /\p{L}{2}/u.test(text)

/** A word and its meaning, side by side. */
const termBlock = (cells: TableRow['cells'], place: Place): Block => ({
  as: 'text',
  text: cells
    .map(cellText)
    .filter((text) => text !== '')
    .join(': '),
  level: 0,
  place,
})

function ownRow(cell: readonly CellText[], place: Place): Block[] {
  const text = cellText(cell)
  return text.length <= 100 && !/[.;]$/.test(text) && !isRef(text)
    ? [headingOf(text, place)]
    : flow(cell, place)
}

function headingOf(text: string, place: Place): Block {
  const { mark, rest } = readMark(text)
  return mark && mark.style !== 'bullet' && rest !== ''
    ? { as: 'heading', text: rest, mark, level: 3, place }
    : { as: 'heading', text, level: 3, place }
}

const flow = (cell: readonly CellText[], place: Place): Block[] =>
  cell
    .filter(({ text }) => text !== '')
    .map(({ text, mark, level, heading }) => {
      const read = mark ? { mark, rest: text } : readMark(text)
      return {
        as: heading ? ('heading' as const) : ('text' as const),
        text: read.rest,
        ...(read.mark ? { mark: read.mark } : {}),
        level: level ?? (heading ? 3 : 0),
        place,
      }
    })

/** The number beside a cell is that of its first text; a first text with a number of its own keeps both. */
function withRef(blocks: readonly Block[], ref: string): Block[] {
  const [first, ...others] = blocks
  if (!first || ref === '') return [...blocks]
  const written = ref.replace(/[.):]$/, '')
  const { mark } = readMark(ref)
  const style = mark?.style ?? 'number'
  const own: Mark = { ref: style === 'number' ? written : (mark?.ref ?? written), style }
  return first.mark && first.mark.style !== 'number'
    ? [{ as: 'text', text: '', mark: own, level: 0, place: first.place }, ...blocks]
    : [{ ...first, mark: own, level: 0 }, ...others]
}

const cellText = (cell: readonly CellText[]): string =>
  cell
    .map(({ text, mark }) => (mark && mark.style !== 'bullet' ? `${mark.ref} ${text}` : text))
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim()

/** The cells of a row of a Markdown table; `\|` is a bar within a cell. */
export const splitRow = (line: string): string[] =>
  line
    .trim()
    .replace(/^\||(?<!\\)\|$/g, '')
    .split(/(?<!\\)\|/)
    .map((cell) => cell.replaceAll('\\|', '|').trim())
