import { describe, expect, test } from 'vitest'
import { sessionsOf } from '../../../src/lib/recall'
import { checkRows, gridOf } from '../../../src/lib/view/history'
import { recallChart } from '../../../src/lib/view/recall-chart'
import { check, history } from '../recall/histories'

describe('the list of checks', () => {
  const rows = checkRows([
    check('2027-03-01T09:00:00Z', 'fm', { id: 'first' }),
    check('2027-03-01T18:00:00Z', 'ff', { id: 'second' }),
    check('2027-03-02T09:00:00Z', 'f', { id: 'gaps', kind: 'gap' }),
  ])
  test('has the latest first', () => {
    expect(rows.map(({ id }) => id)).toEqual(['gaps', 'second', 'first'])
  })
  test('says which do not count', () => {
    expect(rows.map(({ apart }) => apart)).toEqual([
      'gap check',
      'a second try that day: practice',
      '',
    ])
  })
  test('gives day, time, recall and facts in words', () => {
    expect(rows[2]).toMatchObject({
      when: 'Monday, 1 March 2027, 09:00',
      recall: '1 of 2 points full',
      facts: '80 words, 5 minutes',
    })
  })
})

describe('points × sessions', () => {
  test('has a row a point and a cell a session; a point that came later has a gap', () => {
    const grid = gridOf(
      sessionsOf([check('2027-03-01T12:00:00Z', 'fm'), check('2027-03-04T12:00:00Z', 'ffp')]),
    )
    expect(grid).toMatchObject({
      days: ['2027-03-01', '2027-03-04'],
      sessions: [
        { checkId: '2027-03-01T12:00:00Z fm', recall: { full: 1, points: 2 } },
        { checkId: '2027-03-04T12:00:00Z ffp', recall: { full: 2, points: 3 } },
      ],
      rows: [
        { ref: '1.1', cells: ['full', 'full'] },
        { ref: '1.2', cells: ['missed', 'full'] },
        { ref: '1.3', cells: [undefined, 'partial'] },
      ],
    })
  })
  test('of nothing is empty', () =>
    expect(gridOf([])).toEqual({ days: [], sessions: [], rows: [] }))
})

describe('recall over time', () => {
  const today = '2027-03-20'
  const chart = (line: string, width = 640) => recallChart(sessionsOf(history(line)), width, today)

  test('full ends on the finish line, nothing recalled stays at the foot', () => {
    const none = sessionsOf([
      check('2027-03-01T12:00:00Z', 'mm'),
      check('2027-03-05T12:00:00Z', 'ff'),
    ])
    const { stems, top, foot } = recallChart(none, 640, today)
    expect(stems.map(({ y, full }) => [y, full])).toEqual([
      [foot, false],
      [top, true],
    ])
  })
  test('distances are true to the calendar', () => {
    const [a, b, c] = chart('03-01 gaps, 03-02 gaps, 03-05 full').stems.map(({ x }) => x)
    expect((c! - b!) / (b! - a!)).toBeCloseTo(3, 1)
  })
  test('ticks are counts, and shares where the points of a topic have changed', () => {
    expect(chart('03-01 gaps, 03-02 full').ticks.map(({ label }) => label)).toEqual(['0', '1', '2'])
    const grown = sessionsOf([
      check('2027-03-01T12:00:00Z', 'fm'),
      check('2027-03-05T12:00:00Z', 'fff'),
    ])
    expect(recallChart(grown, 640, today).ticks.map(({ label }) => label)).toEqual([
      '0 %',
      '50 %',
      '100 %',
    ])
  })
  test.each([280, 640])('at %i pixels no two labels of days run into each other', (width) => {
    const line = Array.from({ length: 28 }, (_, i) => `03-${String(i + 1).padStart(2, '0')} gaps`)
    const { stems } = chart(line.join(', '), width)
    const labelled = stems.filter(({ dayLabel }) => dayLabel !== '').map(({ x }) => x)
    expect(labelled.at(-1)).toBe(stems.at(-1)?.x)
    for (const [i, x] of labelled.slice(1).entries()) expect(x - labelled[i]!).toBeGreaterThan(80)
    for (const { x } of stems) expect(x > 0 && x < width).toBe(true)
  })
  test.each([280, 640])('at %i pixels no count runs into the next stem', (width) => {
    const line = Array.from({ length: 28 }, (_, i) => `03-${String(i + 1).padStart(2, '0')} gaps`)
    for (const days of [line, ['03-01 gaps', '03-02 full', '03-20 gaps']]) {
      const { stems } = chart(days.join(', '), width)
      expect(stems.at(-1)?.label).not.toBe('')
      for (const [i, { x, label }] of stems.slice(0, -1).entries())
        if (label !== '') expect(stems[i + 1]!.x - x).toBeGreaterThanOrEqual(40)
    }
  })
  test('says the same in words', () => {
    expect(chart('03-01 gaps, 03-02 full').words).toBe(
      'Recall over time, oldest first: 1 of 2 points on 1 March and 2 of 2 points on 2 March. The finish line is every point.',
    )
  })
  test('of a long history its ends, and how often the line was reached', () => {
    const line = Array.from({ length: 9 }, (_, i) => `03-0${i + 1} ${i > 6 ? 'full' : 'gaps'}`)
    expect(chart(line.join(', ')).words).toBe(
      'Recall over time, 9 sessions: from 1 of 2 points on 1 March to 2 of 2 points on 9 March. 2 of them reached the finish line, which is every point. The table below has each.',
    )
  })
})
