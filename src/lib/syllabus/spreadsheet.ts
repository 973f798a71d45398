/**
 * A spreadsheet runs a cell that begins like a formula, and a syllabus may come from anybody: such a cell gets a ' in front when
 * it is written, as the Open Worldwide Application Security Project describes (Application Security Verification Standard 5.0,
 * requirement 1.2.10; "CSV Injection"). Wide forms of the signs count: some spreadsheets read them as the same. A cell that
 * has such a ' of its own gets another, so that taking one off gives every cell back.
 */
export const FORMULA = /^'*\s*[=+\-@\t\r\n\0＝＋－＠]/

/** The cell as it was before a ' was put in front of it. */
export const unmarked = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell
