/**
 * Units of measurement against their definition.
 * Source: BIPM, The International System of Units (SI Brochure), 9th edition, 2019: table 2 (base units), table 4 (derived units
 * with special names and symbols, in base units), table 7 (prefixes), table 8 (non-SI units accepted for use with the SI).
 * The rows are written from memory.
 */
import { describe, expect, test } from 'vitest'
import { numbersIn } from '../../src/lib/marking/quantities/numbers'
import { unitOf } from '../../src/lib/marking/quantities/unit-text'

/** The unit as read; fails where it is none. */
function unit(text: string) {
  const read = unitOf(text)
  if (!read) throw new Error(`"${text}" is not read as a unit`)
  return read
}

function expectSame(text: string, factor: number, base: string) {
  const read = unit(text)
  expect(read.dimension).toBe(unit(base).dimension)
  expect(read.factor / (factor * unit(base).factor)).toBeCloseTo(1, 9)
}

const BASE = [
  ['s', 'second'],
  ['m', 'metre'],
  ['kg', 'kilogram'],
  ['A', 'ampere'],
  ['K', 'kelvin'],
  ['mol', 'mole'],
  ['cd', 'candela'],
] as const

describe('table 2: base units', () => {
  test.each(BASE)('%s, %s', (symbol, name) => {
    expect(unit(symbol).factor).toBe(1)
    expect(unit(name)).toEqual(unit(symbol))
    expect(unit(`${name}s`)).toEqual(unit(symbol))
  })

  test('no two of them measure the same', () => {
    expect(new Set(BASE.map(([symbol]) => unit(symbol).dimension)).size).toBe(BASE.length)
  })
})

// The dimensions of these columns rest on table 2 alone: every unit stands for a product of powers of base units. The plane
// and the solid angle (rad, sr) are left out: the brochure has them as 1, a student's page measures angles in degrees.
const DERIVED = [
  ['Hz', 'hertz', 's^-1'],
  ['N', 'newton', 'kg m s^-2'],
  ['Pa', 'pascal', 'kg m^-1 s^-2'],
  ['J', 'joule', 'kg m^2 s^-2'],
  ['W', 'watt', 'kg m^2 s^-3'],
  ['C', 'coulomb', 'A s'],
  ['V', 'volt', 'kg m^2 s^-3 A^-1'],
  ['F', 'farad', 'kg^-1 m^-2 s^4 A^2'],
  ['Ω', 'ohm', 'kg m^2 s^-3 A^-2'],
  ['S', 'siemens', 'kg^-1 m^-2 s^3 A^2'],
  ['Wb', 'weber', 'kg m^2 s^-2 A^-1'],
  ['T', 'tesla', 'kg s^-2 A^-1'],
  ['H', 'henry', 'kg m^2 s^-2 A^-2'],
  ['lm', 'lumen', 'cd'],
  ['lx', 'lux', 'cd m^-2'],
  ['Bq', 'becquerel', 's^-1'],
  ['Gy', 'gray', 'm^2 s^-2'],
  ['Sv', 'sievert', 'm^2 s^-2'],
] as const

describe('table 4: derived units with special names, in base units', () => {
  test.each(DERIVED)('%s, %s, is 1 %s', (symbol, name, base) => {
    expectSame(symbol, 1, base)
    expectSame(name, 1, base)
  })
})

describe('table 4: in terms of other units', () => {
  test.each([
    ['Pa', 'N/m²'],
    ['J', 'N m'],
    ['W', 'J/s'],
    ['V', 'W/A'],
    ['F', 'C/V'],
    ['Ω', 'V/A'],
    ['S', 'A/V'],
    ['Wb', 'V s'],
    ['T', 'Wb/m²'],
    ['H', 'Wb/A'],
    ['lx', 'lm/m²'],
    ['Gy', 'J/kg'],
    ['Sv', 'J/kg'],
  ])('%s is 1 %s', (symbol, other) => expectSame(symbol, 1, other))
})

const PREFIXES = [
  ['da', 'deca', 1],
  ['h', 'hecto', 2],
  ['k', 'kilo', 3],
  ['M', 'mega', 6],
  ['G', 'giga', 9],
  ['T', 'tera', 12],
  ['P', 'peta', 15],
  ['E', 'exa', 18],
  ['Z', 'zetta', 21],
  ['Y', 'yotta', 24],
  ['d', 'deci', -1],
  ['c', 'centi', -2],
  ['m', 'milli', -3],
  ['µ', 'micro', -6],
  ['n', 'nano', -9],
  ['p', 'pico', -12],
  ['f', 'femto', -15],
  ['a', 'atto', -18],
  ['z', 'zepto', -21],
  ['y', 'yocto', -24],
  // Added by the 27th CGPM, 2022, resolution 3.
  ['R', 'ronna', 27],
  ['Q', 'quetta', 30],
  ['r', 'ronto', -27],
  ['q', 'quecto', -30],
] as const

describe('table 7: prefixes', () => {
  test.each(PREFIXES)('%s, %s, is 10 to the power %i', (symbol, name, power) => {
    expectSame(`${name}metre`, 10 ** power, 'm')
    expectSame(`${name}joule`, 10 ** power, 'J')
    expectSame(`${symbol}m`, 10 ** power, 'm')
    expectSame(`${symbol}J`, 10 ** power, 'J')
  })

  test('the micro sign and the Greek letter are one prefix', () => {
    expect(unit('\u03bcm')).toEqual(unit('\u00b5m'))
  })

  test('a raised unit takes its prefix with it: 1 cm³ is (10⁻² m)³', () => {
    expectSame('cm³', 1e-6, 'm³')
    expectSame('km²', 1e6, 'm²')
    expectSame('µs⁻¹', 1e6, 's⁻¹')
  })
})

const ACCEPTED = [
  ['min', 'minute', 60, 's'],
  ['h', 'hour', 3600, 's'],
  ['d', 'day', 86_400, 's'],
  ['ha', 'hectare', 1e4, 'm^2'],
  ['L', 'litre', 1e-3, 'm^3'],
  ['t', 'tonne', 1e3, 'kg'],
  ['Da', 'dalton', 1.660_539_066_60e-27, 'kg'],
  ['eV', 'electronvolt', 1.602_176_634e-19, 'J'],
] as const

describe('table 8: non-SI units accepted for use with the SI', () => {
  test.each(ACCEPTED)('%s, %s, is %d %s', (symbol, name, factor, base) => {
    expectSame(symbol, factor, base)
    expectSame(name, factor, base)
  })

  test('au is 149 597 870 700 m', () => expectSame('au', 149_597_870_700, 'm'))
  test('l and L are both the litre', () => expect(unit('l')).toEqual(unit('L')))
})

// Chapter 5 of the brochure: how values of quantities are written, beside what students write.
describe('the same quantity, written in other ways', () => {
  test.each([
    ['m/s', 'm s⁻¹'],
    ['m/s', 'm·s⁻¹'],
    ['m/s', 'm s^-1'],
    ['m/s', 'metres per second'],
    ['m/s²', 'm s⁻²'],
    ['m/s²', 'metres per second squared'],
    ['kg/m³', 'kg m⁻³'],
    ['kg/m³', 'kilograms per cubic metre'],
    ['N/kg', 'newtons per kilogram'],
    ['N/kg', 'm/s²'],
    ['dm³', 'L'],
    ['cm³', 'mL'],
    ['kW h', 'kWh'],
  ])('%s is %s', (one, other) => expectSame(one, 1, other))

  test.each([
    ['m', 's'],
    ['m', 'm²'],
    ['N', 'J'],
    ['V', 'A'],
    ['°C', 'K'],
    ['mm', 'MN'],
    ['g', 'Gy'],
  ])('%s does not measure what %s does', (one, other) => {
    expect(unit(one).dimension).not.toBe(unit(other).dimension)
  })

  test.each(['pebbles', 'beach', 'x', ''])('"%s" is no unit', (text) =>
    expect(unitOf(text)).toBeUndefined(),
  )
})

// Section 5.4 and table 7: numbers with powers of ten; the constants are those that define the SI (table 1).
describe('numbers as they are printed', () => {
  test.each([
    ['299,792,458', 299_792_458],
    ['6.62607015 × 10^-34', 6.626_070_15e-34],
    ['1.602176634 × 10⁻¹⁹', 1.602_176_634e-19],
    ['1.602176634e-19', 1.602_176_634e-19],
    ['6.02214076 × 10²³', 6.022_140_76e23],
    ['1.380649 x 10^-23', 1.380_649e-23],
    ['683', 683],
    ['−273.15', -273.15],
  ])('%s', (text, number) => {
    const read = numbersIn(text)
    expect(read).toHaveLength(1)
    expect(read[0]!.number / number).toBeCloseTo(1, 12)
    expect(text.slice(read[0]!.start, read[0]!.end)).toBe(text)
  })
})

test('table 4: the katal', () => expectSame('kat', 1, 'mol s^-1'))

test('section 5.4.4: digits in groups of three', () => {
  expect(numbersIn('299 792 458').map((read) => read.number)).toEqual([299_792_458])
})

// In the brochure and not yet read: each of these has to fail until it is.
describe('not read yet', () => {
  test.fails('table 8: the astronomical unit by its name', () =>
    expectSame('astronomical unit', 149_597_870_700, 'm'),
  )
  test.fails.each([['6.626 070 15 × 10⁻³⁴', 6.626_070_15e-34]])(
    'section 5.4.4: digits in groups of three: %s',
    (text, number) => {
      expect(numbersIn(text).map((read) => read.number)).toEqual([number])
    },
  )
})
