/** Tables with lines drawn round their cells: which text stands in which cell. */
import type { PdfItem, PdfPage, PdfRule } from './types'

export interface RuledTable {
  readonly top: number
  /** Where its columns begin and end. */
  readonly xs: readonly number[]
  readonly rows: readonly (readonly (readonly PdfItem[])[])[]
}

const THIN = 3
const NEAR = 4

/** The tables of a page, and the text that stands outside of them. */
export function ruledTables({ items, rules, height }: PdfPage): {
  tables: RuledTable[]
  outside: readonly PdfItem[]
} {
  const edges = rules.flatMap(edgesOf).filter(({ y0, y1 }) => y1 - y0 < height * 0.95)
  const upright = edges.filter(({ x0, x1, y0, y1 }) => x1 - x0 <= THIN && y1 - y0 > 6)
  const level = edges.filter(({ x0, x1, y0, y1 }) => y1 - y0 <= THIN && x1 - x0 > 12)
  let outside: readonly PdfItem[] = items
  const tables = regions(upright).flatMap(({ from, to, xs }) => {
    const ys = steps(
      level
        .filter(
          ({ y0, x0, x1 }) =>
            y0 >= from - NEAR && y0 <= to + NEAR && x1 > xs[0]! && x0 < xs.at(-1)!,
        )
        .map(({ y0 }) => y0),
    )
    if (xs.length < 3 || ys.length < 2) return []
    const inside = (item: PdfItem) => {
      const [x, y] = [item.x + Math.min(item.width, 4) / 2, item.y - item.size * 0.3]
      return x > xs[0]! - NEAR && x < xs.at(-1)! + NEAR && y > ys[0]! && y < ys.at(-1)!
    }
    const within = outside.filter(inside)
    outside = outside.filter((item) => !inside(item))
    const rows = ys.slice(1).map((bottom, r) => {
      const row = within.filter(
        ({ y, size }) => y - size * 0.3 > ys[r]! && y - size * 0.3 <= bottom,
      )
      return xs
        .slice(1)
        .map((end, c) =>
          row.filter(({ x }) => x + 2 > xs[c]! && (x + 2 <= end || c === xs.length - 2)),
        )
    })
    return [{ top: ys[0]!, xs, rows }]
  })
  return { tables, outside }
}

/** A box has four edges. */
function edgesOf(rule: PdfRule): PdfRule[] {
  const { x0, y0, x1, y1 } = rule
  if (x1 - x0 <= THIN || y1 - y0 <= THIN) return [rule]
  return [
    { x0, y0, x1, y1: y0 },
    { x0, y0: y1, x1, y1 },
    { x0, y0, x1: x0, y1 },
    { x0: x1, y0, x1, y1 },
  ]
}

/** Upright lines that stand beside each other or go on below one another. */
function regions(upright: readonly PdfRule[]): { from: number; to: number; xs: number[] }[] {
  const found: { from: number; to: number; rules: PdfRule[] }[] = []
  for (const rule of [...upright].sort((a, b) => a.y0 - b.y0)) {
    const last = found.at(-1)
    if (last && rule.y0 <= last.to + NEAR) {
      last.rules.push(rule)
      last.to = Math.max(last.to, rule.y1)
    } else found.push({ from: rule.y0, to: rule.y1, rules: [rule] })
  }
  return found.map(({ from, to, rules }) => ({ from, to, xs: steps(rules.map(({ x0 }) => x0)) }))
}

/** Numbers in order, those that are next to each other as one. */
function steps(numbers: readonly number[]): number[] {
  const sorted = [...numbers].sort((a, b) => a - b)
  return sorted.filter((n, i) => i === 0 || n - sorted[i - 1]! > NEAR)
}
