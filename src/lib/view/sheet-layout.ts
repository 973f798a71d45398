/** Where things go on paper: pages of a sheet, and cards whose fronts and backs meet when the paper is turned. */

export type Paper = 'a4' | 'a3'
export type TextSize = 'small' | 'large' | 'largest'

/** How a sheet is laid out, as its address has it. */
export interface SheetLook {
  readonly as: 'sheet' | 'cards'
  readonly paper: Paper
  readonly size: TextSize
  readonly columns: 1 | 2
}

export const PLAIN_LOOK: SheetLook = { as: 'sheet', paper: 'a4', size: 'large', columns: 1 }

/** What an address says of the look; what it does not say, or says wrongly, is plain. */
export function readLook(query: { get(name: string): string | null }): SheetLook {
  const pick = <T extends string>(name: string, of: readonly T[], plain: T): T =>
    of.find((one) => one === query.get(name)) ?? plain
  return {
    as: pick('as', ['sheet', 'cards'], PLAIN_LOOK.as),
    paper: pick('paper', ['a4', 'a3'], PLAIN_LOOK.paper),
    size: pick('size', ['small', 'large', 'largest'], PLAIN_LOOK.size),
    columns: pick('columns', ['1', '2'], '1') === '2' ? 2 : 1,
  }
}

/** Paper in millimetres, upright. Source: ISO 216. */
export const PAPER_MM: Readonly<Record<Paper, { width: number; height: number }>> = {
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
}

/** Room on a page, in any one unit. The first page has less: its head stands on it. */
export interface Room {
  readonly height: number
  readonly firstHeight: number
  readonly columns: number
}

/**
 * Blocks that may not be split -> pages -> columns -> the indices of the blocks, in order, a column filled before the next.
 * A block higher than a column has one to itself. At least one page.
 */
export function fillPages(heights: readonly number[], room: Room): number[][][] {
  const pages: number[][][] = [[[]]]
  let used = 0
  heights.forEach((height, i) => {
    let page = pages.at(-1)!
    const most = pages.length === 1 ? room.firstHeight : room.height
    if (used > 0 && used + height > most) {
      used = 0
      if (page.length < room.columns) page.push([])
      else pages.push((page = [[]]))
    }
    page.at(-1)!.push(i)
    used += height
  })
  return pages
}

/** Cards a page has room for. */
export interface CardGrid {
  readonly columns: number
  readonly rows: number
}

/** One leaf: what is printed on its front and on its back, row by row; `undefined` where no card is. */
export interface Leaf<T> {
  readonly grid: CardGrid
  readonly front: readonly (T | undefined)[]
  readonly back: readonly (T | undefined)[]
}

/**
 * Cards on leaves for printing on both sides. The paper is turned over its long edge: upright paper then keeps its rows and
 * swaps left and right, so a card's back stands in the mirrored column of the same row.
 */
export function cardLeaves<T>(cards: readonly T[], grid: CardGrid): Leaf<T>[] {
  const { columns, rows } = grid
  const size = columns * rows
  const leaves: Leaf<T>[] = []
  for (let start = 0; start < cards.length; start += size) {
    const front = Array.from({ length: size }, (_, i) => cards[start + i])
    const back = front.map((_, i) => {
      const column = i % columns
      return front[i - column + (columns - 1 - column)]
    })
    leaves.push({ grid, front, back })
  }
  return leaves
}

const ROWS: Readonly<Record<Paper, Readonly<Record<TextSize, number>>>> = {
  a4: { small: 5, large: 4, largest: 3 },
  a3: { small: 7, large: 6, largest: 4 },
}

/**
 * The grid of ordinary cards, and those of cards with more to say: as many rows in one column, then about half the rows of the
 * grid before. The last has one card a page.
 */
export function cardGrids({ paper, size, columns }: SheetLook): CardGrid[] {
  const most = ROWS[paper][size]
  const grids: CardGrid[] = columns === 2 ? [{ columns, rows: most }] : []
  for (let rows = most; rows > 1; rows = Math.floor(rows / 2)) grids.push({ columns: 1, rows })
  return [...grids, { columns: 1, rows: 1 }]
}

/** The levels (places in `cardGrids`) of cards once those named have gone up by one, at most to `most`; absent is 0. */
export function oneLarger(
  levels: ReadonlyMap<string, number>,
  keys: readonly string[],
  most: number,
): Map<string, number> {
  const next = new Map(levels)
  for (const key of new Set(keys)) next.set(key, Math.min((levels.get(key) ?? 0) + 1, most))
  return next
}
