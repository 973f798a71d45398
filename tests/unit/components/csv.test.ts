/** The table of a syllabus, read back by two parsers that are not its writer's: strictly by RFC 4180, and as a spreadsheet would. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { csvOf } from '../../../src/lib/components/csv'
import { readIdea, readWordings, TABLE_COLUMNS, tableRows } from '../../../src/lib/syllabus'
import { syllabi } from '../syllabus/arbitrary'

/** RFC 4180, section 2: fields in quotes where they hold commas, quotes or breaks; CRLF between records. */
function strictly(text: string): string[][] {
  const rows: string[][] = []
  let at = 0
  while (at < text.length) {
    const row: string[] = []
    for (;;) {
      let field = ''
      if (text[at] === '"') {
        for (at += 1; ; at += 1) {
          if (at >= text.length) throw new Error('A quote is left open.')
          if (text[at] !== '"') field += text[at]
          else if (text[at + 1] === '"') field += text[(at += 1)]
          else break
        }
        at += 1
      } else {
        while (at < text.length && !',\r\n"'.includes(text[at]!)) field += text[at++]
      }
      row.push(field)
      if (text[at] === ',') at += 1
      else if (text.startsWith('\r\n', at)) {
        at += 2
        break
      } else throw new Error(`Unexpected ${JSON.stringify(text[at])} at ${at}.`)
    }
    rows.push(row)
  }
  return rows
}

const unguarded = (cell: string) =>
  /^'+\s*[=+\-@\t\r\n\0＝＋－＠]/.test(cell) ? cell.slice(1) : cell

describe('a table', () => {
  test('has a row a point, its fields in their columns', () => {
    const rows = tableRows({
      format: 1,
      id: 'shore',
      title: 'Shore',
      topics: [
        {
          id: 'drift',
          title: 'Drift',
          caution: 'Ask about the tide.',
          points: [
            { ref: '2.1', text: 'Name two, or "three".', any: 2, ideas: ['a / b', 'c'].map(readIdea) },
            {
              ref: '2.2',
              text: 'Speed.',
              ideas: [],
              equation: { written: 'v = f', kind: 'algebraic', where: { v: readWordings('speed / pace'), f: readWordings('frequency') } },
            },
          ],
        },
      ],
    }) // prettier-ignore
    const cell = (row: number, column: (typeof TABLE_COLUMNS)[number]) =>
      rows[row]![TABLE_COLUMNS.indexOf(column)]
    expect(rows[0]).toEqual([...TABLE_COLUMNS])
    expect(rows).toHaveLength(3)
    expect(cell(1, 'ideas')).toBe('a / b\nc')
    expect(cell(1, 'any')).toBe('2')
    expect(cell(1, 'caution')).toBe('Ask about the tide.')
    expect(cell(2, 'caution')).toBe('')
    expect(cell(2, 'where')).toBe('v: speed / pace\nf: frequency')
  })

  test('as CSV it reads back cell by cell, for any syllabus', async () => {
    await fc.assert(
      fc.asyncProperty(syllabi, async (syllabus) => {
        const rows = tableRows(syllabus)
        const text = await csvOf(rows)
        expect(text.startsWith('\uFEFF')).toBe(true)
        expect(strictly(text.slice(1)).map((row) => row.map(unguarded))).toEqual(rows)
      }),
      { numRuns: 200 },
    )
  })
})

// OWASP, "CSV Injection", and Application Security Verification Standard 5.0, requirement 1.2.10: the signs that begin a formula.
describe('no cell begins a formula', () => {
  test.each(['=', '+', '-', '@', '\t', '\r', '\n', '\0', '＝', '＋', '－', '＠'])(
    'a text that begins with %j',
    async (sign) => {
      const [[cell]] = strictly((await csvOf([[`${sign}1+1`]])).slice(1)) as [[string]]
      expect(cell).toBe(`'${sign}1+1`)
    },
  )

  test('nor after blanks; other texts are as they are', async () => {
    const [row] = strictly((await csvOf([['  =1', 'a=1', '2-1', "'quoted'", '']])).slice(1))
    expect(row).toEqual(["'  =1", 'a=1', '2-1', "'quoted'", ''])
  })

  test('whatever is in the syllabus', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.string({ unit: 'binary' }), { minLength: 1 }), async (cells) => {
        const [row] = strictly((await csvOf([['x', ...cells]])).slice(1))
        for (const cell of row!) expect(cell).not.toMatch(/^[=+\-@\t\r\n\0＝＋－＠]/)
      }),
    )
  })
})
