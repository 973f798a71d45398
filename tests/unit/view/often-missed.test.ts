import { describe, expect, test } from 'vitest'
import { sessionsOf } from '../../../src/lib/recall'
import { gridOf } from '../../../src/lib/view/history'
import { oftenMissed, oftenMissedWords } from '../../../src/lib/view/often-missed'
import { check } from '../recall/histories'

/** Sessions on days in a row, oldest first; a letter a point. */
const missed = (...sessions: string[]) =>
  oftenMissed(
    gridOf(
      sessionsOf(
        sessions.map((marks, i) =>
          check(`2027-03-${String(i + 1).padStart(2, '0')}T12:00:00Z`, marks),
        ),
      ),
    ),
  )

describe('the points that keep being missed', () => {
  test.each([
    { why: 'missed once is no habit', sessions: ['m', 'f'], refs: [] },
    { why: 'missed twice is', sessions: ['m', 'm'], refs: ['1.1'] },
    {
      why: 'part said and the opposite count as well',
      sessions: ['pc', 'cp'],
      refs: ['1.1', '1.2'],
    },
    { why: 'twice out of five is known by now', sessions: ['m', 'm', 'f', 'f', 'f'], refs: [] },
    { why: 'twice out of four is not', sessions: ['m', 'f', 'm', 'f'], refs: ['1.1'] },
    { why: 'the most often first', sessions: ['mm', 'mm', 'fm'], refs: ['1.2', '1.1'] },
    {
      why: 'what was missed long ago and is full since is left out',
      sessions: ['m', 'm', 'm', 'm', 'm', 'm', ...Array<string>(8).fill('f')],
      refs: [],
    },
    {
      why: 'a point that came later counts from then on',
      sessions: ['f', 'f', 'fm', 'fm'],
      refs: ['1.2'],
    },
    { why: 'nothing checked', sessions: [], refs: [] },
  ])('$why', ({ sessions, refs }) => {
    expect(missed(...sessions).map(({ ref }) => ref)).toEqual(refs)
  })

  test('in words', () => {
    const words = (...sessions: string[]) =>
      missed(...sessions).map((point) => oftenMissedWords(point, '2027-03-20'))
    expect(words('p', 'm')).toEqual([
      'Not full in 2 of the last 2 sessions; the last time: missed. Never full yet.',
    ])
    expect(words('m', 'f', 'c')).toEqual([
      'Not full in 2 of the last 3 sessions; the last time: says the opposite. Last full on 2 March.',
    ])
  })
})
