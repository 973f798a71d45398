import { describe, expect, test } from 'vitest'
import { countedCheck, decidedOutcomes, type Check } from '../../../src/lib/recall'
import {
  agreementsOf,
  batchOf,
  changedMarks,
  changesSince,
  chosenChecks,
  groupOf,
  marksBeside,
  mostMissed,
  newReview,
  seenNow,
  sentenceOf,
  summarise,
  topicGrid,
  topicKey,
  withPoint,
  withReview,
  type Pupil,
} from '../../../src/lib/review'
import { markingKey } from '../../../src/lib/view/marking-keys'
import { tutorWords } from '../../../src/lib/view/remarks'
import { pupilTable } from '../../../src/lib/view/review-tables'
import { check, page } from '../store/records'

const atMs = (day: string) => Date.parse(`${day}T12:00:00Z`)
/** A check of one letter a point: f full, p partial, m missed, c contradicted. */
const of = (id: string, day: string, marks: string, more: Partial<Check> = {}): Check =>
  check(id, {
    atMs: atMs(day),
    marks: [...marks].map((letter, i) => ({
      ref: `1.${i + 1}`,
      outcome: ({ f: 'full', p: 'partial', c: 'contradicted' } as const)[letter] ?? 'missed',
    })),
    ...more,
  })
const kept = (...checks: Check[]) =>
  checks.map((one) => ({ check: one, topic: 0, withText: false }))
const change = (ref: string, outcome: 'full' | 'missed' | null, by: 'student' | 'tutor') =>
  ({ ref, outcome, by, atMs: 1 }) as const

const pupil = (name: string, ...checks: Check[]): Pupil => ({
  schema: 1,
  id: name,
  name,
  madeAtMs: 1,
  openedAtMs: 2,
  checks: checks.length,
  topics: summarise(kept(...checks), [page('x').topic]),
})

describe('the group', () => {
  const mara = pupil('Mara', of('a', '2027-03-01', 'ffm'), of('b', '2027-03-04', 'fmm'))
  const ben = pupil('Ben', of('c', '2027-03-02', 'fff'), of('d', '2027-03-05', 'fff'))
  const ida = pupil('Ida', of('e', '2027-02-01', 'fmm'))
  const new1 = pupil('New')

  test('no session first, then the lowest recall, then who has been away for longest', () => {
    const { rows } = groupOf([ben, mara, new1, ida], '2027-03-06')
    expect(rows.map(({ name }) => name)).toEqual(['New', 'Ida', 'Mara', 'Ben'])
  })

  test('a cell has the latest recall, the trend, the run and the days', () => {
    const { rows } = groupOf([mara, ben], '2027-03-06')
    expect(rows[0]?.cells[0]).toEqual({
      full: 1,
      points: 3,
      run: 0,
      daysSince: 2,
      before: { full: 2, points: 3 },
      trend: 'down',
    })
    expect(rows[1]?.cells[0]).toMatchObject({ run: 2, trend: 'same', daysSince: 1 })
  })

  test('points most missed: by pupils, with the syllabus’s words', () => {
    expect(mostMissed([mara, ben, ida])).toMatchObject([
      { ref: '1.2', names: ['Mara', 'Ida'], of: 3, text: page('x').topic.points[1]!.text },
      { ref: '1.3', names: ['Mara', 'Ida'], of: 3 },
    ])
  })
})

test('topics by day: the first check of a day counts, gap checks do not', () => {
  const grid = topicGrid(
    kept(
      of('a', '2027-03-01', 'fm'),
      of('b', '2027-03-01', 'ff', { atMs: atMs('2027-03-01') + 60_000 }),
      of('c', '2027-03-02', 'ff', { kind: 'gap' }),
      of('d', '2027-03-03', 'ff', { topicId: 'tides', topicTitle: 'Tides' }),
    ),
  )
  expect(grid.days).toEqual(['2027-03-01', '2027-03-03'])
  expect(grid.rows.map(({ title, cells }) => [title, cells.map((cell) => cell?.full)])).toEqual([
    ['Longshore drift', [1, undefined]],
    ['Tides', [undefined, 2]],
  ])
})

test('a choice: topics and days, both ends included', () => {
  const checks = ['2027-03-01', '2027-03-02', '2027-03-03'].map((day) => of(day, day, 'f'))
  const choice = { from: '2027-03-02', to: '2027-03-03', withText: true }
  const topics = new Set([topicKey(checks[0]!)])
  expect(chosenChecks(checks, { ...choice, topics }).map(({ id }) => id)).toEqual([
    '2027-03-02',
    '2027-03-03',
  ])
  expect(chosenChecks(checks, { ...choice, topics: new Set() })).toEqual([])
})

describe('what changed', () => {
  test.each([
    { marks: 'm', to: 'full', direction: 'for' },
    { marks: 'f', to: 'missed', direction: 'against' },
    { marks: 'c', to: 'missed', direction: 'neither' },
  ] as const)('$marks made $to is $direction', ({ marks, to, direction }) => {
    const one = of('a', '2027-03-01', marks, { changes: [change('1.1', to, 'student')] })
    expect(changedMarks([one])).toMatchObject([{ ref: '1.1', to, direction }])
  })

  test('a doubt confirmed, a change taken back and the tutor’s marks are no changes of the pupil', () => {
    const changes = [
      change('1.1', 'missed', 'student'),
      change('1.2', 'missed', 'student'),
      change('1.2', null, 'student'),
      change('1.3', 'full', 'tutor'),
    ]
    expect(changedMarks([of('a', '2027-03-01', 'mfm', { changes })])).toEqual([])
  })

  test('the sentence is the one that the mark turns on', () => {
    const { text, report } = page('a')
    expect(sentenceOf(text, report, '1.2')).toBe(text.slice(27, 36))
    expect(sentenceOf(text, report, '1.1')).toBe(text.slice(0, 26))
    expect(sentenceOf(text, report, 'none')).toBe('')
  })

  test('since the last look: new checks, changed marks, checks that are gone', () => {
    const before = [
      of('a', '2027-03-01', 'f'),
      of('b', '2027-03-02', 'f'),
      of('c', '2027-03-03', 'f'),
    ]
    const now = [
      before[0]!,
      { ...before[1]!, changes: [change('1.1', 'missed', 'student')] },
      of('d', '2027-03-04', 'f'),
    ]
    const since = changesSince(seenNow(before, 1), now)
    expect(since.newChecks.map(({ id }) => id)).toEqual(['d'])
    expect(since.changed.map(({ id }) => id)).toEqual(['b'])
    expect(since.gone).toBe(1)
    expect(changesSince(undefined, now).newChecks).toHaveLength(3)
  })
})

describe('moderation', () => {
  const one = of('a', '2027-03-01', 'fm', { changes: [change('1.2', 'full', 'student')] })
  const point = { ref: '1.2', outcome: 'missed', comment: '', atMs: 5 } as const

  test('the tutor’s mark stands beside the marker’s and the pupil’s, and decides', () => {
    const review = withPoint(newReview('p', 'a'), point)
    expect(marksBeside(one, review)).toEqual([
      { ref: '1.2', tutor: 'missed', marker: 'missed', pupil: 'full' },
    ])
    expect(decidedOutcomes(withReview(one, review))[1]).toMatchObject({
      outcome: 'missed',
      by: 'tutor',
    })
  })

  test('a mark taken back without a comment leaves nothing', () => {
    const review = withPoint(newReview('p', 'a'), point)
    expect(withPoint(review, { ...point, outcome: null }).points).toEqual([])
    expect(withPoint(review, { ...point, outcome: null, comment: 'See 2.' }).points).toHaveLength(1)
  })

  test('the student’s setting leaves the tutor’s marks out, and shows them all the same', () => {
    const marked = { ...one, changes: [...one.changes, change('1.2', 'missed', 'tutor')] }
    expect(decidedOutcomes(countedCheck(marked, {}))[1]?.by).toBe('tutor')
    expect(decidedOutcomes(countedCheck(marked, { tutorMarksCount: false }))[1]?.by).toBe('student')
    const words = tutorWords(marked, undefined, { tutorMarksCount: false })
    expect(words?.points.get('1.2')).toEqual({ outcome: 'missed', student: 'full', comment: '' })
    expect(words?.sentence).toMatch(/do not count/)
    expect(tutorWords(one, undefined, {})).toBeUndefined()
  })

  test.each([
    { key: 'F', means: 'full' },
    { key: 's', means: 'contradicted' },
    { key: 'ArrowDown', means: 'next' },
    { key: 'x', means: undefined },
  ])('the key $key means $means', ({ key, means }) => {
    const plain = { key, ctrlKey: false, metaKey: false, altKey: false }
    expect(markingKey(plain)).toBe(means)
    expect(markingKey({ ...plain, ctrlKey: true })).toBeUndefined()
  })
})

test('a batch: the lowest page and the most missed point first', () => {
  const { topic, report } = page('a')
  const empty = {
    ...report,
    points: report.points.map((p) => ({ ...p, outcome: 'missed' as const })),
  }
  const batch = batchOf(topic, [
    { name: 'one', report },
    { name: 'none', report: empty },
  ])
  expect(batch.pages.map(({ name, full }) => [name, full])).toEqual([
    ['none', 0],
    ['one', 1],
  ])
  expect(batch.points.map(({ ref, missing }) => [ref, missing])).toEqual([
    ['1.2', ['one', 'none']],
    ['1.1', ['none']],
  ])
})

test('the table of a pupil has every mark, what was changed with its sentence, comments and agreement', () => {
  const { topic, text, report } = page('a')
  const one = of('a', '2027-03-01', 'fc', { changes: [change('1.2', 'full', 'student')] })
  const review = {
    ...withPoint(newReview('p', 'a'), {
      ref: '1.2',
      outcome: 'missed',
      comment: 'See 2.',
      atMs: 5,
    }),
    comment: 'Good order.',
  }
  const [head, ...rows] = pupilTable(
    'Mara',
    { schema: 1, id: 'p', madeAtMs: 1, topics: [topic], checks: kept(one) },
    new Map([['a', review]]),
    new Map([['a', { text, report }]]),
    agreementsOf(marksBeside(one, review)),
  )
  const cell = (row: number, column: string) => rows[row]?.[head!.indexOf(column)]
  expect(cell(0, 'Changed')).toBe('')
  expect(cell(1, 'Marker')).toBe('says the opposite')
  expect(cell(1, 'Pupil’s mark')).toBe('full')
  expect(cell(1, 'Changed')).toBe('in their own favour')
  expect(cell(1, 'The sentence')).toBe(text.slice(27, 36))
  expect(cell(1, 'Tutor’s mark')).toBe('missed')
  expect(cell(1, 'Comment')).toBe('See 2.')
  expect(cell(1, 'Comment on the check')).toBe('Good order.')
  expect(rows).toContainEqual(['Points the same', '0', 'Of', '1'])
})
