/** A page as pdfjs reads it -> the text and the drawn lines that the import works with. */
import type { OPS as Operators, PDFPageProxy } from 'pdfjs-dist'
import type { PdfItem, PdfPage, PdfRule } from '$lib/syllabus/import'

type Matrix = readonly [number, number, number, number, number, number]
const UNIT: Matrix = [1, 0, 0, 1, 0, 0]
/** As the library numbers the parts of a path. */
const MOVE = 0
const LINE = 1
const CURVE = 2
const CLOSE = 3
const MOST_RULES = 4000

/** Rejects where the page cannot be read whole. The page's memory is given back. */
export async function pdfPage(page: PDFPageProxy, ops: typeof Operators): Promise<PdfPage> {
  const { width, height, transform } = page.getViewport({ scale: 1 })
  const view = transform as unknown as Matrix
  const { items } = await page.getTextContent()
  const texts = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item] : []))
  if (texts.length === 0) {
    page.cleanup()
    return { number: page.pageNumber, width, height, items: [], rules: [] }
  }
  // Only this loads the fonts' names, and the lines drawn round the cells of a table.
  const list = await page.getOperatorList()
  const bold = new Map<string, boolean>()
  const isBold = (font: string) => {
    if (!bold.has(font)) bold.set(font, boldFont(page, font))
    return bold.get(font)!
  }
  const read = texts.map((item): PdfItem => {
    const [a, b, c, d, x, y] = times(view, item.transform as unknown as Matrix)
    const size = Math.hypot(c, d) || Math.hypot(a, b)
    return { text: item.str, x, y, width: item.width, size, bold: isBold(item.fontName) }
  })
  const rules = rulesOf(list.fnArray, list.argsArray as unknown[], view, ops)
  page.cleanup()
  return { number: page.pageNumber, width, height, items: read, rules }
}

function boldFont(page: PDFPageProxy, font: string): boolean {
  if (!page.commonObjs.has(font)) return false
  const {
    name = '',
    bold,
    black,
  } = page.commonObjs.get(font) as { name?: string; bold?: boolean; black?: boolean }
  // TeX's bold fonts are called cmbx, ecbx and sfbx.
  return bold === true || black === true || /bold|black|heavy|demi|(?:cm|ec|sf)bx/i.test(name)
}

function rulesOf(
  fns: readonly number[],
  args: readonly unknown[],
  view: Matrix,
  ops: typeof Operators,
): PdfRule[] {
  const rules: PdfRule[] = []
  const saved: Matrix[] = []
  let matrix: Matrix = UNIT
  for (let i = 0; i < fns.length && rules.length < MOST_RULES; i += 1) {
    if (fns[i] === ops.save) saved.push(matrix)
    else if (fns[i] === ops.restore) matrix = saved.pop() ?? UNIT
    else if (fns[i] === ops.transform) matrix = times(matrix, args[i] as Matrix)
    else if (fns[i] === ops.constructPath) {
      const [paint, [path] = []] = args[i] as [number, (Float32Array | null)[]?]
      // A path that is not painted only cuts.
      if (paint !== ops.endPath && path instanceof Float32Array)
        rules.push(...straight(path, times(view, matrix)))
    }
  }
  return rules
}

/** The level and upright lines of a path. */
function straight(path: Float32Array, matrix: Matrix): PdfRule[] {
  const rules: PdfRule[] = []
  let [x, y, startX, startY] = [0, 0, 0, 0]
  const to = (nextX: number, nextY: number) => {
    const [x0, y0] = applied(matrix, x, y)
    const [x1, y1] = applied(matrix, nextX, nextY)
    if (Math.abs(x0 - x1) < 1 || Math.abs(y0 - y1) < 1)
      rules.push({
        x0: Math.min(x0, x1),
        y0: Math.min(y0, y1),
        x1: Math.max(x0, x1),
        y1: Math.max(y0, y1),
      })
    ;[x, y] = [nextX, nextY]
  }
  for (let i = 0; i < path.length && rules.length < 200;) {
    const kind = path[i]
    if (kind === MOVE) {
      ;[x, y] = [path[i + 1]!, path[i + 2]!]
      ;[startX, startY] = [x, y]
      i += 3
    } else if (kind === LINE) {
      to(path[i + 1]!, path[i + 2]!)
      i += 3
    } else if (kind === CURVE) {
      ;[x, y] = [path[i + 5]!, path[i + 6]!]
      i += 7
    } else if (kind === CLOSE) {
      to(startX, startY)
      i += 1
    } else return rules
  }
  return rules
}

const applied = ([a, b, c, d, e, f]: Matrix, x: number, y: number): [number, number] => [
  a * x + c * y + e,
  b * x + d * y + f,
]

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
]
