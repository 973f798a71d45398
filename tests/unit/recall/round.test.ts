/** The rules of a round: nothing leaves the pile unless it was written in full, and it ends when everything was. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Outcome, Report } from '../../../src/lib/marking'
import {
  endRound,
  goOn,
  outcomesOf,
  pointNow,
  remark,
  standing,
  wrote,
  type Round,
} from '../../../src/lib/recall'

const OUTCOMES = ['full', 'partial', 'missed', 'contradicted'] as const

const report = (ref: string, outcome: Outcome): Report => ({
  marker: '1',
  topic: 'drift',
  points: [{ ref, outcome, ideas: [], drafted: false, offered: false, sureness: 0, why: '' }],
  statements: [],
  beyond: [],
})

const round = (refs: readonly string[], more: Partial<Round> = {}): Round => ({
  schema: 1,
  id: 'r',
  uid: 'u',
  kind: 'drill',
  syllabusId: 's',
  title: 'Drift',
  topics: [],
  points: refs.map((ref) => ({ key: ref, topicId: 'drift', ref, tries: 0, spentMs: 0 })),
  pile: refs,
  stage: 'writing',
  typing: [''],
  startedAtMs: 0,
  savedAtMs: 0,
  spentMs: 0,
  ...more,
})

const write = (from: Round, outcome: Outcome): Round =>
  wrote(from, { text: 'x', report: report(pointNow(from)!.ref, outcome), atMs: 1, spentMs: 1 })

const refs = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 4 }), {
  minLength: 1,
  maxLength: 12,
})
const outcome = fc.constantFrom<Outcome>(...OUTCOMES)
const change = fc.option(outcome, { nil: null })

describe('a round', () => {
  test('nothing leaves the pile unless it stands as full, and nothing comes into it', () => {
    fc.assert(
      fc.property(refs, fc.array(fc.tuple(outcome, change), { maxLength: 60 }), (all, turns) => {
        let at = round(all)
        for (const [marked, changed] of turns) {
          if (at.stage === 'over') break
          const before = at
          at = goOn(remark(write(at, marked), changed))
          const gone = before.pile.filter((key) => !at.pile.includes(key))
          const full = (changed ?? marked) === 'full'
          expect(gone).toEqual(full ? [before.pile[0]] : [])
          expect(at.pile.every((key) => before.pile.includes(key))).toBe(true)
          expect(new Set(at.pile).size).toBe(at.pile.length)
        }
        for (const point of at.points)
          if (!at.pile.includes(point.key)) expect(standing(point)).toBe('full')
      }),
    )
  })

  test('it ends when every point is written in full in the end, however often it was not', () => {
    fc.assert(
      fc.property(refs, fc.integer({ min: 0, max: 5 }), outcome, (all, misses, how) => {
        let at = round(all)
        let turns = 0
        const most = all.length * (misses + 1)
        while (at.stage !== 'over' && turns <= most) {
          const full = pointNow(at)!.tries >= misses
          at = goOn(write(at, full ? 'full' : how))
          turns += 1
        }
        expect(at.stage).toBe('over')
        expect(at.pile).toEqual([])
        expect(turns).toBeLessThanOrEqual(most)
      }),
    )
  })

  test('every point comes round before any comes a second time', () => {
    let at = round(['a', 'b', 'c'])
    const seen: string[] = []
    for (let i = 0; i < 6; i += 1) {
      seen.push(pointNow(at)!.ref)
      at = goOn(write(at, 'missed'))
    }
    expect(seen).toEqual(['a', 'b', 'c', 'a', 'b', 'c'])
  })

  test('a step out of its turn changes nothing', () => {
    const writing = round(['a'])
    expect(goOn(writing)).toBe(writing)
    expect(remark(writing, 'full')).toBe(writing)
    const marked = write(writing, 'missed')
    expect(write(marked, 'full')).toBe(marked)
    const over = endRound(marked)
    expect(goOn(over)).toBe(over)
    expect(pointNow(over)).toBeUndefined()
  })

  test('a changed mark is taken back by null', () => {
    const marked = write(round(['a']), 'missed')
    expect(standing(pointNow(remark(marked, 'full'))!)).toBe('full')
    expect(standing(pointNow(remark(remark(marked, 'full'), null))!)).toBe('missed')
  })

  test('time that is up ends it with the point that is being written, never before', () => {
    const late = round(['a', 'b'], { budgetMs: 100, spentMs: 100 })
    expect(pointNow(late)?.ref).toBe('a')
    expect(goOn(write(late, 'missed')).stage).toBe('over')
    const early = round(['a', 'b'], { budgetMs: 100, spentMs: 99 })
    expect(goOn(write(early, 'missed')).stage).toBe('writing')
  })

  test('ended early, it tells apart what came, what did not and what was not come to', () => {
    const at = endRound(goOn(write(goOn(write(round(['a', 'b', 'c']), 'full')), 'partial')))
    const { back, not, unseen } = outcomesOf(at)
    expect([back, not, unseen].map((some) => some.map(({ ref }) => ref))).toEqual([
      ['a'],
      ['b'],
      ['c'],
    ])
    expect(at.pile).toEqual(['c', 'b'])
  })
})
