import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  pointsSince,
  readIdea,
  readValue,
  readWordings,
  sameMeaning,
  type Point,
} from '../../../../src/lib/syllabus'
import { syllabi } from '../arbitrary'

const point = (text: string, rest: Partial<Point> = {}): Point => ({
  ref: '1',
  text,
  ideas: [],
  ...rest,
})
const ideas = (...written: string[]) => written.map(readIdea)
const equation = (written: string, v = 'speed') => ({
  written,
  kind: 'algebraic' as const,
  where: { v: readWordings(v), f: readWordings('frequency'), λ: readWordings('wavelength') },
})

describe('still the same point', () => {
  const text = 'Waves reach the beach at an angle.'
  test.each([
    { why: 'nothing changed', a: point(text), b: point(text) },
    { why: 'another number', a: point(text), b: point(text, { ref: '2.9' }) },
    { why: 'a cue', a: point(text), b: point(text, { cue: 'How do waves come in?' }) },
    { why: 'case, spacing and a full stop', a: point(text), b: point('Waves  reach the Beach at an angle') },
    { why: 'a letter was missing', a: point('Gravty pulls it down.'), b: point('Gravity pulls it down.') },
    { why: 'a letter too many', a: point('The beachh is steep.'), b: point('The beach is steep.') },
    { why: 'two letters exchanged', a: point('Recieve the wave.'), b: point('Receive the wave.') },
    { why: 'ideas in another order', a: point(text, { ideas: ideas('waves', 'angle') }), b: point(text, { ideas: ideas('angle', 'waves') }) },
    { why: 'spaces in an idea', a: point(text, { ideas: ideas('waves/swash') }), b: point(text, { ideas: ideas('waves / swash') }) },
    { why: 'all of them, said or not', a: point(text, { ideas: ideas('a', 'b'), any: 2 }), b: point(text, { ideas: ideas('a', 'b') }) },
    { why: 'the value written otherwise', a: point(text, { value: readValue('9.8 N/kg ± 0.2') }), b: point(text, { value: readValue('9.8 ± 0.2 N/kg') }) },
    { why: 'spaces in an equation', a: point(text, { equation: equation('v=f×λ') }), b: point(text, { equation: equation('v = f × λ') }) },
  ])('$why', ({ a, b }) => { expect(sameMeaning(a, b)).toBe(true) }) // prettier-ignore
})

describe('another point', () => {
  const text = 'Waves reach the beach at an angle.'
  test.each([
    { why: 'other words', a: point(text), b: point('Waves reach the beach head on.') },
    { why: 'a word more', a: point(text), b: point('Waves never reach the beach at an angle.') },
    { why: 'words in another order', a: point('Sand holds water.'), b: point('Water holds sand.') },
    { why: 'a letter for another', a: point('The alkane burns.'), b: point('The alkene burns.') },
    { why: 'the end of a salt', a: point('It is a sulfate.'), b: point('It is a sulfite.') },
    { why: 'another beginning', a: point('It is typical here.'), b: point('It is atypical here.') },
    { why: 'a short word', a: point('An ion is lost.'), b: point('An iron is lost.') },
    { why: 'a figure', a: point('It takes 12345 years.'), b: point('It takes 1234 years.') },
    { why: 'a sign', a: point('It falls to −5 °C.'), b: point('It falls to 5 °C.') },
    { why: 'an idea less', a: point(text, { ideas: ideas('waves', 'angle') }), b: point(text, { ideas: ideas('waves') }) },
    { why: 'a wording more', a: point(text, { ideas: ideas('waves') }), b: point(text, { ideas: ideas('waves / swash') }) },
    { why: 'the exact term now', a: point(text, { ideas: ideas('swash') }), b: point(text, { ideas: ideas('"swash"') }) },
    { why: 'fewer are enough', a: point(text, { ideas: ideas('a', 'b') }), b: point(text, { ideas: ideas('a', 'b'), any: 1 }) },
    { why: 'another tolerance', a: point(text, { value: readValue('9.8 ± 0.2') }), b: point(text, { value: readValue('9.8 ± 0.1') }) },
    { why: 'another equation', a: point(text, { equation: equation('v = f × λ') }), b: point(text, { equation: equation('v = f / λ') }) },
    { why: 'other words for a symbol', a: point(text, { equation: equation('v = f × λ') }), b: point(text, { equation: equation('v = f × λ', 'speed / pace') }) },
    { why: 'steps in another order', a: point(text, { steps: ideas('a', 'b') }), b: point(text, { steps: ideas('b', 'a') }) },
    { why: 'what loses the point', a: point(text), b: point(text, { reject: ['waves come in straight'] }) },
  ])('$why', ({ a, b }) => { expect(sameMeaning(a, b)).toBe(false) }) // prettier-ignore
})

test('drafted ideas taken as they are change nothing; they do once they are changed', () => {
  const drafted = point('Gravity pulls.')
  const ideasOf = (one: Point) => (one.ideas.length > 0 ? one.ideas : ideas('gravity', 'pulls'))
  expect(sameMeaning(drafted, { ...drafted, ideas: ideas('gravity', 'pulls') }, ideasOf)).toBe(true)
  expect(sameMeaning(drafted, { ...drafted, ideas: ideas('gravity') }, ideasOf)).toBe(false)
})

test('the same as itself and the same both ways, for any points', () => {
  const points = syllabi.map(({ topics }) => topics.flatMap((topic) => topic.points))
  fc.assert(
    fc.property(points, points, (some, others) => {
      for (const a of some) {
        expect(sameMeaning(a, a)).toBe(true)
        for (const b of others) expect(sameMeaning(a, b)).toBe(sameMeaning(b, a))
      }
    }),
    { numRuns: 100 },
  )
})

describe('what became of the points of a topic', () => {
  const named = (ref: string, text: string) => point(text, { ref })
  const was = [named('1', 'Waves.'), named('2', 'Swash.'), named('3', 'Drift.')]
  test.each([
    { why: 'as they were', now: was, since: [] },
    { why: 'in another order', now: [...was].reverse(), since: [] },
    { why: 'two exchanged their numbers', now: [named('2', 'Waves.'), named('1', 'Swash.'), was[2]!], since: [{ ref: '1', now: '2' }, { ref: '2', now: '1' }] },
    { why: 'one in front, all renumbered', now: [named('1', 'Tides.'), named('2', 'Waves.'), named('3', 'Swash.'), named('4', 'Drift.')], since: [{ ref: '1', now: '2' }, { ref: '2', now: '3' }, { ref: '3', now: '4' }] },
    { why: 'one dropped', now: was.slice(1), since: [{ ref: '1', now: null }] },
    { why: 'one means something else', now: [named('1', 'Tides.'), ...was.slice(1)], since: [{ ref: '1', now: null }] },
    { why: 'one dropped, another new under its number', now: [named('1', 'Tides.'), was[1]!, was[2]!], since: [{ ref: '1', now: null }] },
  ])('$why', ({ now, since }) => { expect(pointsSince(was, now)).toEqual(since) }) // prettier-ignore

  test('two alike: each of today goes on from one only', () => {
    const twins = [named('1', 'Waves.'), named('2', 'Waves.')]
    expect(pointsSince(twins, [named('3', 'Waves.')])).toEqual([
      { ref: '1', now: '3' },
      { ref: '2', now: null },
    ])
  })
})
