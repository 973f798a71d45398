/** Rows -> a CSV file (RFC 4180) that a spreadsheet opens as text. */

/**
 * A cell that begins like a formula gets a ' in front, as the Open Worldwide Application Security Project describes (Application
 * Security Verification Standard 5.0, requirement 1.2.10; "CSV Injection"): a syllabus may come from anybody, and a
 * spreadsheet runs what it takes for a formula. Wide forms of the signs count: some spreadsheets read them as the same. A
 * cell that has such a ' of its own gets another, so that taking one off gives every cell back.
 */
const FORMULA = /^'*\s*[=+\-@\t\r\n\0＝＋－＠]/

/** With the mark by which spreadsheets know Unicode. Loaded on first use: the writer of CSV is on no page before. */
export async function csvOf(rows: readonly (readonly string[])[]): Promise<string> {
  const { default: papa } = await import('papaparse')
  const text = papa.unparse(rows as string[][], { escapeFormulae: FORMULA, newline: '\r\n' })
  return `\uFEFF${text}\r\n`
}
