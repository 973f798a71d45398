/** What a PDF page gives: pieces of text with their places, in points (1/72 inch) from the top left corner. */
export interface PdfItem {
  readonly text: string
  readonly x: number
  /** Of the baseline. */
  readonly y: number
  readonly width: number
  readonly size: number
  readonly bold: boolean
}

/** A line or a box that is drawn: the borders of tables. */
export interface PdfRule {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

export interface PdfPage {
  /** From 1, as in the file. */
  readonly number: number
  readonly width: number
  readonly height: number
  readonly items: readonly PdfItem[]
  readonly rules: readonly PdfRule[]
}

/** A stretch of one printed line, with no wide gap in it. */
export interface Segment {
  readonly text: string
  readonly x0: number
  readonly x1: number
  readonly y: number
  readonly size: number
  readonly bold: boolean
  readonly page: number
}

/** A segment as it is read, in the column that it stands in. */
export interface Line extends Segment {
  readonly left: number
  readonly right: number
}
