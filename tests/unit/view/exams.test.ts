import { describe, expect, test } from 'vitest'
import { examLines, overWithoutNext } from '../../../src/lib/view/exams'

const today = '2027-03-10'
const syllabi = [
  { id: 'shores', title: 'Shores' },
  { id: 'trade', title: 'Trade' },
]
const lines = (...exams: Parameters<typeof examLines>[0]) => examLines(exams, syllabi, today)

describe('how far off an exam is', () => {
  test.each([
    { day: '2027-03-10', away: 'today', part: 'ahead' },
    { day: '2027-03-11', away: 'tomorrow', part: 'ahead' },
    { day: '2027-03-22', away: 'in 12 days', part: 'ahead' },
    { day: '2028-03-10', away: 'in 366 days', part: 'ahead' },
    { day: '2027-03-09', away: 'yesterday', part: 'over' },
    { day: '2027-03-05', away: '5 days ago', part: 'over' },
  ] as const)('$day: $away', ({ day, away, part }) => {
    expect(lines({ syllabusId: 'shores', day })[part].map((line) => line.away)).toEqual([away])
  })

  test('over the night that the clocks go forward a day is a day', () => {
    expect(
      examLines([{ syllabusId: 'shores', day: '2027-03-29' }], syllabi, '2027-03-27'),
    ).toMatchObject({
      ahead: [{ days: 2 }],
    })
  })
})

test('the nearest comes first, and of those over the latest', () => {
  const days = ['2027-06-03', '2027-02-01', '2027-05-20', '2027-03-01']
  const { ahead, over } = lines(...days.map((day) => ({ syllabusId: 'shores', day })))
  expect(ahead.map(({ exam }) => exam.day)).toEqual(['2027-05-20', '2027-06-03'])
  expect(over.map(({ exam }) => exam.day)).toEqual(['2027-03-01', '2027-02-01'])
})

test('has its own title or else the syllabus’s, and how much it asks', () => {
  const { ahead } = lines(
    { syllabusId: 'shores', day: '2027-05-20', title: 'Paper 1', topicIds: ['a', 'b'] },
    { syllabusId: 'trade', day: '2027-05-21', title: ' ' },
    { syllabusId: 'gone', day: '2027-05-22' },
  )
  expect(ahead.map(({ title, asks }) => [title, asks])).toEqual([
    ['Paper 1', '2 topics'],
    ['Trade', 'all topics'],
  ])
})

test('an exam that is over is worth a word only where no other of its syllabus is ahead', () => {
  const over = overWithoutNext(
    lines(
      { syllabusId: 'shores', day: '2027-03-01' },
      { syllabusId: 'shores', day: '2027-06-01' },
      { syllabusId: 'trade', day: '2027-03-02' },
    ),
  )
  expect(over.map(({ exam }) => exam.syllabusId)).toEqual(['trade'])
})
