/** Rows -> a CSV file (RFC 4180) that a spreadsheet opens as text. */
import { FORMULA } from '../syllabus'

/** With the mark by which spreadsheets know Unicode. Loaded on first use: the writer of CSV is on no page before. */
export async function csvOf(rows: readonly (readonly string[])[]): Promise<string> {
  const { default: papa } = await import('papaparse')
  const text = papa.unparse(rows as string[][], { escapeFormulae: FORMULA, newline: '\r\n' })
  return `\uFEFF${text}\r\n`
}
