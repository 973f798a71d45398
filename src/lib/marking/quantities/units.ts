/**
 * Units of measurement and their conversion to SI base units.
 * Source: BIPM, The International System of Units (SI Brochure), 9th edition: tables 2 (base units), 4 (derived units with
 * special names), 7 (prefixes) and 8 (non-SI units accepted for use with the SI). The rest (knot, mile, bar, calorie, …)
 * are common practice; byte prefixes follow the SI (decimal).
 */

/** Exponents of the base dimensions: m kg s A K mol cd, then bit, °C, currency and plane angle kept as their own. */
export type Dimension = string

export interface Unit {
  /** How many of the base unit one of this is. */
  readonly factor: number
  readonly dimension: Dimension
}

const BASES = [
  'm',
  'kg',
  's',
  'A',
  'K',
  'mol',
  'cd',
  'bit',
  'degC',
  'degF',
  'GBP',
  'USD',
  'EUR',
  'deg',
  'dB',
] as const
type Base = (typeof BASES)[number]
type Powers = Partial<Record<Base, number>>

interface Entry {
  readonly names: string
  readonly factor: number
  readonly powers: Powers
  /** May carry an SI prefix. */
  readonly prefixed?: boolean
}

const entry = (names: string, factor: number, powers: Powers, prefixed = false): Entry => ({
  names,
  factor,
  powers,
  prefixed,
})

/** Symbols first (case matters), then names after `|` (case does not matter; plural by s or es). */
const ENTRIES: readonly Entry[] = [
  entry('m|metre meter', 1, { m: 1 }, true),
  entry('g gm|gram gramme', 1e-3, { kg: 1 }, true),
  entry('s sec secs|second', 1, { s: 1 }, true),
  entry('A|ampere amp', 1, { A: 1 }, true),
  entry('K|kelvin', 1, { K: 1 }, true),
  entry('mol|mole', 1, { mol: 1 }, true),
  entry('cd|candela', 1, { cd: 1 }, true),
  entry('Hz|hertz', 1, { s: -1 }, true),
  entry('N|newton', 1, { kg: 1, m: 1, s: -2 }, true),
  entry('Pa|pascal', 1, { kg: 1, m: -1, s: -2 }, true),
  entry('J|joule', 1, { kg: 1, m: 2, s: -2 }, true),
  entry('W|watt', 1, { kg: 1, m: 2, s: -3 }, true),
  entry('C|coulomb', 1, { A: 1, s: 1 }, true),
  entry('V|volt', 1, { kg: 1, m: 2, s: -3, A: -1 }, true),
  entry('F|farad', 1, { kg: -1, m: -2, s: 4, A: 2 }, true),
  entry('Ω ohm ohms|ohm', 1, { kg: 1, m: 2, s: -3, A: -2 }, true),
  entry('S|siemens', 1, { kg: -1, m: -2, s: 3, A: 2 }, true),
  entry('Wb|weber', 1, { kg: 1, m: 2, s: -2, A: -1 }, true),
  entry('T|tesla', 1, { kg: 1, s: -2, A: -1 }, true),
  entry('H|henry', 1, { kg: 1, m: 2, s: -2, A: -2 }, true),
  entry('lm|lumen', 1, { cd: 1 }, true),
  entry('lx|lux', 1, { cd: 1, m: -2 }, true),
  entry('Bq|becquerel', 1, { s: -1 }, true),
  entry('Gy|gray', 1, { m: 2, s: -2 }, true),
  entry('Sv|sievert', 1, { m: 2, s: -2 }, true),
  entry('kat|katal', 1, { mol: 1, s: -1 }, true),
  entry('min mins|minute', 60, { s: 1 }),
  entry('h hr hrs|hour', 3600, { s: 1 }),
  entry('d|day', 86_400, { s: 1 }),
  entry('wk|week', 604_800, { s: 1 }),
  entry('|month', 2_629_800, { s: 1 }),
  entry('yr yrs|year', 31_557_600, { s: 1 }),
  entry('ha|hectare', 1e4, { m: 2 }),
  entry('L l|litre liter', 1e-3, { m: 3 }, true),
  entry('cc|', 1e-6, { m: 3 }),
  entry('t|tonne', 1e3, { kg: 1 }, true),
  entry('u Da|dalton', 1.660_539_066_6e-27, { kg: 1 }),
  entry('eV|electronvolt', 1.602_176_634e-19, { kg: 1, m: 2, s: -2 }, true),
  entry('au AU|', 149_597_870_700, { m: 1 }),
  entry('bar|bar', 1e5, { kg: 1, m: -1, s: -2 }, true),
  entry('atm|atmosphere', 101_325, { kg: 1, m: -1, s: -2 }),
  entry('cal|calorie', 4.184, { kg: 1, m: 2, s: -2 }, true),
  entry('Wh|', 3600, { kg: 1, m: 2, s: -2 }, true),
  entry('Å|angstrom', 1e-10, { m: 1 }),
  entry('kn kt|knot', 1852 / 3600, { m: 1, s: -1 }),
  entry('mph|', 1609.344 / 3600, { m: 1, s: -1 }),
  entry('|mile', 1609.344, { m: 1 }),
  entry('ft|foot feet', 0.3048, { m: 1 }),
  entry('|inch', 0.0254, { m: 1 }),
  entry('|fathom', 1.8288, { m: 1 }),
  entry('b|bit', 1, { bit: 1 }, true),
  entry('B|byte', 8, { bit: 1 }, true),
  entry('°C ℃ degC|', 1, { degC: 1 }),
  entry('°F degF|', 1, { degF: 1 }),
  entry('%|percent', 0.01, {}),
  entry('‰|permille', 1e-3, {}),
  entry('ppm|', 1e-6, {}),
  entry('°|degree', 1, { deg: 1 }),
  entry('rad|radian', 180 / Math.PI, { deg: 1 }),
  entry('dB|decibel', 1, { dB: 1 }),
  entry('£|pound', 1, { GBP: 1 }),
  entry('p|pence penny', 0.01, { GBP: 1 }),
  entry('$|dollar', 1, { USD: 1 }),
  entry('€|euro', 1, { EUR: 1 }),
]

const PREFIXES: readonly (readonly [string, string, number])[] = [
  ['Q', 'quetta', 1e30],
  ['R', 'ronna', 1e27],
  ['Y', 'yotta', 1e24],
  ['Z', 'zetta', 1e21],
  ['E', 'exa', 1e18],
  ['P', 'peta', 1e15],
  ['T', 'tera', 1e12],
  ['G', 'giga', 1e9],
  ['M', 'mega', 1e6],
  ['k', 'kilo', 1e3],
  ['h', 'hecto', 1e2],
  ['da', 'deca', 1e1],
  ['d', 'deci', 1e-1],
  ['c', 'centi', 1e-2],
  ['m', 'milli', 1e-3],
  ['µ', 'micro', 1e-6],
  ['μ', 'micro', 1e-6],
  ['n', 'nano', 1e-9],
  ['p', 'pico', 1e-12],
  ['f', 'femto', 1e-15],
  ['a', 'atto', 1e-18],
  ['z', 'zepto', 1e-21],
  ['y', 'yocto', 1e-24],
  ['r', 'ronto', 1e-27],
  ['q', 'quecto', 1e-30],
]

interface Named {
  readonly factor: number
  readonly powers: Powers
}

const symbols = new Map<string, Named>()
const names = new Map<string, Named>()

for (const { names: written, factor, powers, prefixed } of ENTRIES) {
  const [short = '', long = ''] = written.split('|')
  const forms = long.split(' ').filter(Boolean)
  for (const [symbol, word, size] of prefixed
    ? [['', '', 1] as const, ...PREFIXES]
    : [['', '', 1] as const]) {
    const named = { factor: factor * size, powers }
    // A plain unit wins over a prefixed one of the same spelling (min is a minute, Pa a pascal).
    for (const form of short.split(' ').filter(Boolean)) {
      if (!symbols.has(symbol + form) || symbol === '') symbols.set(symbol + form, named)
    }
    for (const form of forms) {
      names.set(word + form, named)
      names.set(
        word + form + (form.endsWith('s') || form.endsWith('x') || form.endsWith('h') ? 'es' : 's'),
        named,
      )
    }
  }
}
names.set('henries', names.get('henry')!)

/** One unit without exponent: by symbol (case matters), then by name (case does not). */
export function unitNamed(word: string): Named | undefined {
  return symbols.get(word) ?? names.get(word.toLowerCase())
}

/** The full names, for telling a misspelt unit. */
export const unitNames: readonly string[] = [...names.keys()]

/** A product of powers in one comparable string; `''` is a pure number. */
export function dimensionOf(powers: Powers): Dimension {
  return BASES.filter((base) => powers[base])
    .map((base) => `${base}${powers[base]}`)
    .join(' ')
}

export function multiplied(
  unit: { factor: number; powers: Powers },
  named: Named,
  exponent: number,
) {
  const powers: Powers = { ...unit.powers }
  for (const base of BASES) {
    const power = named.powers[base]
    if (power !== undefined) powers[base] = (powers[base] ?? 0) + power * exponent
  }
  return { factor: unit.factor * named.factor ** exponent, powers }
}
