import { describe, expect, test } from 'vitest'
import { stringify } from 'yaml'
import { mark } from '../../../src/lib/marking'
import {
  expressionOf,
  sameRelation,
  type Expression,
  type Relation,
  type Term,
} from '../../../src/lib/marking/quantities/algebra'
import { compareReactions, reactionIn } from '../../../src/lib/marking/quantities/chemistry'
import { numbersIn } from '../../../src/lib/marking/quantities/numbers'
import { readSyllabus } from '../../../src/lib/syllabus'

function outcome(point: Record<string, unknown>, says: string) {
  const file = {
    format: 1,
    title: 'T',
    topics: [{ title: 'X', points: [{ ref: '1', text: 'a point', ...point }] }],
  }
  const read = readSyllabus(stringify(file))
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes))
  return mark(read.syllabus.topics[0]!, says).points[0]!.outcome
}

describe('an equation of waves', () => {
  const wave = {
    equation: 'v = f × λ',
    where: { v: 'wave speed / speed', f: 'frequency', λ: 'wavelength / lambda' },
  }
  test.each([
    ['v = fλ', 'full', 'nothing between the factors'],
    ['f = v / λ', 'full', 'rearranged'],
    ['speed is frequency times wavelength', 'full', 'in words'],
    ['you multiply the frequency by the wavelength to get the speed', 'full', 'told as a rule'],
    [
      'speed = frequency x wavelength and we measured it with a ruler',
      'full',
      'something else behind it',
    ],
    ['v = f × λ / 2', 'contradicted', 'a factor too much'],
    ['v = f × λ + 3', 'contradicted', 'a term too much'],
    ['v = f × λ²', 'contradicted', 'a power too much'],
    ['2v = f × λ', 'contradicted', 'a factor on the left'],
    ['1/v = fλ', 'contradicted', 'turned upside down on the left'],
    ['speed is frequency times wavelength squared', 'contradicted', 'squared in words'],
    ['speed = frequency ÷ wavelength', 'contradicted', 'divided for multiplied'],
    ['speed is not frequency times wavelength', 'contradicted', 'denied'],
    ['v = f × λ, no wait, v = f / λ', 'contradicted', 'the correction stands, and it is wrong'],
    ['v f λ', 'missed', 'letters without an equals sign'],
  ])('%s is %s: %s', (says, expected) => expect(outcome(wave, says)).toBe(expected))
})

describe('a value with a unit', () => {
  const tide = { ideas: ['tide range'], value: '6 m ± 0.5' }
  test.each([
    ['the tide range is 6 m', 'full'],
    ['the tide range is 600 cm', 'full'],
    ['the tide range is six metres', 'full'],
    ['the tide range is 6', 'partial'],
    ['the tide range is 9 m', 'contradicted'],
    ['the tide range is not 6 m', 'contradicted'],
    ['the tide range is 6 km', 'contradicted'],
  ])('%s is %s', (says, expected) => expect(outcome(tide, says)).toBe(expected))

  test('a tiny quantity is told from nought and from its double', () => {
    const charge = { ideas: ['charge'], value: '1.6 × 10^-19 C ± 0.1 × 10^-19' }
    expect(outcome(charge, 'the charge is 1.6 × 10^-19 C')).toBe('full')
    expect(outcome(charge, 'the charge is 3.2 × 10^-19 C')).not.toBe('full')
    expect(outcome(charge, 'the charge is 0 C')).not.toBe('full')
  })
  // Common practice: as students write them, where nothing else can be meant.
  test.each([
    ['35 °C', 'the harbour froze at 35 C', 'full'],
    ['35 °C', 'the harbour froze at 35 degrees', 'full'],
    ['35 °C', 'the harbour froze at 35°', 'full'],
    ['35 °C', 'the harbour froze at 308.15 K', 'full'],
    ['35 °C', 'the harbour froze at 36 C', 'contradicted'],
    ['3 nautical miles', 'the harbour froze 3 nm out', 'full'],
    ['3 nautical miles', 'the harbour froze 3 NM out', 'full'],
    ['3 nautical miles', 'the harbour froze 4 nm out', 'contradicted'],
    ['500 nm', 'the harbour froze 500 nm deep', 'full'],
    ['5 C', 'the harbour froze with 5 C', 'full'],
  ])('%s asked, “%s”: %s', (value, says, expected) => {
    expect(outcome({ ideas: ['harbour + froze'], value }, says)).toBe(expected)
  })

  test('another currency is another quantity', () => {
    const price = { ideas: ['price'], value: '£5' }
    expect(outcome(price, 'the price is £5')).toBe('full')
    expect(outcome(price, 'the price is 500p')).toBe('full')
    expect(outcome(price, 'the price is $5')).not.toBe('full')
  })
})

describe('numbers in a text', () => {
  test.each([
    ['three hundred and forty', [340]],
    ['twenty thousand', [20_000]],
    ['1,025 and 3e8 and 3.0 × 10^8', [1025, 3e8, 3e8]],
    ['minus 273', [-273]],
    ['four, three marks', [4, 3]],
    ['one constructor', [1]],
    ['H2O has no number', []],
  ])('%s', (text, numbers) => expect(numbersIn(text).map((n) => n.number)).toEqual(numbers))
})

describe('reactions', () => {
  const none = () => undefined
  const read = (text: string) => {
    const reference = reactionIn('2H₂ + O₂ → 2H₂O', new Set(), none)!
    const species = new Set([...reference.from.keys(), ...reference.to.keys()])
    const one = reactionIn(text, species, none)
    return one && compareReactions(one, reference)
  }
  test.each([
    ['2H2 + O2 -> 2H2O', 'same'],
    ['4H2 + 2O2 → 4H2O', 'same'],
    ['2h2 + o2 = 2h2o', 'same'],
    ['hydrogen burns: 2H₂(g) + O₂(g) → 2H₂O(l)', 'same'],
    ['H2 + O2 → H2O', 'wrong'],
    ['2H2 + O2 → 2H2O2', 'wrong'],
    ['2H2O → 2H2 + O2', 'wrong'],
    ['CH4 + 2O2 → CO2 + 2H2O', 'other'],
  ])('%s is %s', (text, expected) => expect(read(text)).toBe(expected))

  test('ions typed plainly', () => {
    const reference = reactionIn('NaCl → Na⁺ + Cl⁻', new Set(), none)!
    const species = new Set([...reference.from.keys(), ...reference.to.keys()])
    for (const text of ['NaCl -> Na+ + Cl-', 'NaCl(s) → Na+(aq) + Cl-(aq)']) {
      expect(compareReactions(reactionIn(text, species, none)!, reference)).toBe('same')
    }
  })
})

describe('algebra: only what follows from the reference is the same', () => {
  const symbol = (name: string): Expression => ({ kind: 'symbol', name })
  const binary = (
    left: Expression,
    op: '+' | '-' | '*' | '/' | '^',
    right: Expression,
  ): Expression => ({ kind: 'binary', op, left, right })
  const num = (value: number): Expression => ({ kind: 'number', value })
  const reference: Relation = {
    left: symbol('v'),
    right: binary(symbol('u'), '+', binary(symbol('a'), '*', symbol('t'))),
  }
  const right: readonly Relation[] = [
    reference,
    { left: symbol('u'), right: binary(symbol('v'), '-', binary(symbol('a'), '*', symbol('t'))) },
    { left: symbol('t'), right: binary(binary(symbol('v'), '-', symbol('u')), '/', symbol('a')) },
  ]
  test.each(right)('a rearrangement', (relation) =>
    expect(sameRelation(relation, reference)).toBe(true),
  )
  test.each(
    right.flatMap((relation) => [
      { ...relation, right: binary(relation.right, '*', num(2)) },
      { ...relation, right: binary(relation.right, '+', num(1)) },
      { ...relation, right: binary(relation.right, '^', num(2)) },
      { ...relation, left: binary(relation.left, '*', num(3)) },
    ]),
  )('a change to one side is never the same', (relation) =>
    expect(sameRelation(relation, reference)).toBe(false),
  )

  test('no expression is no error', () => {
    const op = (o: '+' | '*' | '('): Term => ({ kind: 'op', op: o })
    expect(expressionOf([])).toBeUndefined()
    expect(expressionOf([op('*'), op('+')])).toBeUndefined()
    expect(expressionOf([op('('), { kind: 'number', value: 1 }])).toBeUndefined()
  })
})
