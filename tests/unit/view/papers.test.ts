/** The log of exam questions as rows: what is exported comes back, and nothing in it runs. */
import fc from 'fast-check'
import papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { csvOf } from '../../../src/lib/components/csv'
import { WAYS_WRONG, type PaperQuestion } from '../../../src/lib/recall'
import {
  CSV_HEAD,
  csvRows,
  overTime,
  paperGroups,
  perCent,
  pointsWords,
  questionWords,
} from '../../../src/lib/view/papers'

const question = (more: Partial<PaperQuestion> = {}): PaperQuestion => ({
  schema: 1,
  id: 'a',
  syllabusId: 'shores',
  topicId: 'drift',
  day: '2027-03-05',
  source: 'Harbour mock',
  marksWon: 2.5,
  marksOutOf: 4,
  points: [
    { ref: '2.3', lost: true },
    { ref: '2.1', lost: false },
  ],
  ...more,
})
const namesOf = () => ({ syllabus: 'Shores', topic: 'Longshore drift' })

const readBack = async (papers: readonly PaperQuestion[]) =>
  papa.parse<string[]>(await csvOf(csvRows(papers, namesOf)), { skipEmptyLines: true }).data

describe('the log as CSV', () => {
  test('a question in its columns', () => {
    const rows = csvRows(
      [question({ question: '3 (b)', wentWrong: ['left-out', 'misread'], note: 'Late.' })],
      namesOf,
    )
    expect(rows).toEqual([
      [...CSV_HEAD],
      [
        '2027-03-05',
        'Harbour mock',
        '3 (b)',
        'Shores',
        'Longshore drift',
        '2.5',
        '4',
        '2.3; 2.1',
        '2.3',
        'Known, but left out; Question misread',
        'Late.',
      ],
    ])
  })

  // OWASP, "CSV Injection": cells that begin with = + - @, tab or carriage return are prepended with an apostrophe.
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '=1\nsecond line', '＝1'])(
    'OWASP: a cell that begins like a formula does nothing in a spreadsheet: %j',
    async (note) => {
      const [, row] = await readBack([question({ note })])
      expect(row?.at(-1)).toBe(`'${note}`)
    },
  )

  test('read back by another reader it is what was logged, quotes, commas and line breaks included', async () => {
    const text = fc.string({ unit: fc.constantFrom(...'a",;\n =+-@\t\'é1') })
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc
            .record({
              source: text,
              question: text,
              note: text,
              wentWrong: fc.uniqueArray(fc.constantFrom(...WAYS_WRONG)),
            })
            .map(question),
          { minLength: 1, maxLength: 8 },
        ),
        async (papers) => {
          const rows = csvRows(papers, namesOf)
          const back = await readBack(papers)
          // The apostrophe in front is taken off again.
          const harmless = (cell: string, i: number, written: string[]) =>
            cell === `'${written[i]}` ? written[i] : cell
          expect(back.map((row, r) => row.map((cell, i) => harmless(cell, i, rows[r]!)))).toEqual(
            rows,
          )
        },
      ),
    )
  })

  test('an empty log is its head', async () => {
    expect(await readBack([])).toEqual([[...CSV_HEAD]])
  })
})

test('many days are told by the month, few by the day', () => {
  const days = (count: number) =>
    Array.from({ length: count }, (_, i) => question({ day: `2027-0${1 + (i % 9)}-1${i % 10}` }))
  expect(overTime(days(2), '2027-12-01').stretches).toEqual(['10 Jan', '11 Feb'])
  expect(overTime(days(9), '2027-12-01').stretches[0]).toBe('Jan')
  expect(overTime(days(9), '2028-12-01').stretches[0]).toBe('Jan 2027')
})

test('questions of one paper on one day stand together', () => {
  const groups = paperGroups([
    question({ id: '1' }),
    question({ id: '2' }),
    question({ id: '3', source: 'Quay mock' }),
    question({ id: '4', day: '2027-03-01' }),
  ])
  expect(groups.map(({ questions }) => questions.map(({ id }) => id))).toEqual([
    ['1', '2'],
    ['3'],
    ['4'],
  ])
})

test('in words', () => {
  expect(questionWords(question())).toBe('Harbour mock')
  expect(questionWords(question({ question: '3' }))).toBe('Harbour mock, question 3')
  expect(pointsWords(question().points)).toBe('lost on 2.3; held 2.1')
  expect(pointsWords([])).toBe('')
  expect(perCent({ won: 1, outOf: 3 })).toBe(33)
  expect(perCent({ won: 0, outOf: 0 })).toBeUndefined()
})
