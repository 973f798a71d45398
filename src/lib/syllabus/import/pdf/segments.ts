/** Pieces of text on a page -> the stretches of its printed lines. */
import { readMark } from '../marks'
import type { PdfItem, PdfPage, Segment } from './types'

/** A gap wider than this many times the size parts columns and cells; words are a third apart. */
const GAP = 1.5

/** Fonts of TeX that do not say what their signs are: the Cork encoding (T1) of 1990 has these five there. */
const TEX_LIGATURES: Readonly<Record<string, string>> = {
  '\u001b': 'ff',
  '\u001c': 'fi',
  '\u001d': 'fl',
  '\u001e': 'ffi',
  '\u001f': 'ffl',
}

export function segmentsOf({ items, number }: Pick<PdfPage, 'items' | 'number'>): Segment[] {
  return baselines(items).flatMap((line) => {
    const parts: PdfItem[][] = []
    for (const item of line) {
      const part = parts.at(-1)
      const before = part?.at(-1)
      if (part && before && !parts_(part, before, item)) part.push(item)
      else parts.push([item])
    }
    return parts.map((part) => segmentOf(part, number))
  })
}

// A number or a bullet belongs to what stands beside it, however wide the gap.
function parts_(part: readonly PdfItem[], before: PdfItem, item: PdfItem): boolean {
  const gap = item.x - (before.x + before.width)
  if (gap <= Math.max(before.size, item.size) * GAP) return false
  const { mark, rest } = readMark(textOf(part))
  return !(mark && rest === '' && gap < 80)
}

/** Items by their lines; raised and lowered figures stay with the line that they belong to. */
export function baselines(items: readonly PdfItem[]): PdfItem[][] {
  const sorted = items
    .filter(({ text }) => text.trim() !== '')
    .sort((a, b) => a.y - b.y || a.x - b.x)
  const lines: { y: number; size: number; items: PdfItem[] }[] = []
  for (const item of sorted) {
    const near = lines
      .slice(-3)
      .find(
        (line) =>
          Math.abs(line.y - item.y) <
          Math.max(line.size, item.size) * (line.size === item.size ? 0.25 : 0.45),
      )
    if (near) {
      near.items.push(item)
      if (item.size > near.size) Object.assign(near, { y: item.y, size: item.size })
    } else lines.push({ y: item.y, size: item.size, items: [item] })
  }
  return lines.sort((a, b) => a.y - b.y).map((line) => line.items.sort((a, b) => a.x - b.x))
}

function textOf(part: readonly PdfItem[]): string {
  let text = ''
  let end = -Infinity
  for (const item of part) {
    const apart =
      item.x - end > item.size * 0.15 && text !== '' && !/\s$/.test(text) && !/^\s/.test(item.text)
    text += apart ? ` ${item.text}` : item.text
    end = item.x + item.width
  }
  return (
    text
      // eslint-disable-next-line no-control-regex
      .replace(/[\u001b-\u001f]/g, (sign) => TEX_LIGATURES[sign] ?? sign)
      .replace(/\s+/g, ' ')
      .trim()
  )
}

function segmentOf(part: readonly PdfItem[], page: number): Segment {
  const longest = part.reduce((best, item) => (item.text.length > best.text.length ? item : best))
  const letters = part.reduce((sum, { text }) => sum + text.length, 0)
  const bold = part.reduce((sum, item) => sum + (item.bold ? item.text.length : 0), 0)
  return {
    text: textOf(part),
    x0: part[0]!.x,
    x1: Math.max(...part.map(({ x, width }) => x + width)),
    y: longest.y,
    size: longest.size,
    bold: bold >= letters * 0.9,
    page,
  }
}
