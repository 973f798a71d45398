import { NotationError } from './notation-error'
import type { Value } from './types'

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const SCALES: Readonly<Record<string, number>> = {
  thousand: 3,
  million: 6,
  billion: 9,
  trillion: 12,
}
const NUMBER = new RegExp(
  // -20, 1,025, 300 000, 0.10
  '(?<sign>[-−–+])?(?<whole>\\d{1,3}(?:[, \\u00a0\\u2009\\u202f]\\d{3})+(?!\\d)|\\d+)?(?<decimals>\\.\\d+)?' +
    // × 10^8, × 10⁸, e8, million
    `(?:\\s*[×x*·⋅]\\s*10(?:\\s*\\^\\s*(?<power>[-−–+]?\\d+)|(?<raised>[⁻⁺]?[${SUPERSCRIPTS}]+))` +
    '|[eE](?<exponent>[-−+]?\\d+)(?![\\p{L}\\d])|\\s+(?<scale>thousand|million|billion|trillion)(?!\\p{L}))?',
  'uy',
)
const PLUS_MINUS = /±|\+\s?\/\s?[-−–]|\+[-−–]/
const CURRENCY = /^[£$€¥]\s*/
const RANGE = /^(?:[-–—−]|to\b|or\b)\s*[-−]?\d/
const SECOND_NUMBER = /(?<=^|\s)[-−+]?\.?\d/
const UNIT = /^[/(]?[\p{L}%‰°£$€¥′″"'][^=]*$/u

interface NumberRead {
  readonly number: number
  /** Half a unit of the last digit given. */
  readonly half: number
  readonly sign: string
  /** Power of ten of a scale word such as million; 0 without one. */
  readonly scale: number
  readonly end: number
}

/**
 * A value with its unit and tolerance: `9.8 N/kg ± 0.2`, `9.8 ± 0.2 N/kg`, `3.0 × 10^8 m/s`, `4.6 billion years ± 0.1`.
 * Without ± the tolerance is half a unit of the last digit given; in standard form, of the last digit of the mantissa
 * (3.0 × 10^8: half of 0.1 × 10^8). `± 2 %` of another unit is that share of the number. After a scale word a plain
 * tolerance is on the same scale (± 0.1 billion).
 * @throws NotationError where it cannot be read; a range is refused, since its middle and half-width say the same.
 */
export function readValue(written: string): Value {
  const mark = PLUS_MINUS.exec(written)
  const main = written.slice(0, mark?.index)
  const start = main.length - main.trimStart().length
  const currency = CURRENCY.exec(main.slice(start))?.[0] ?? ''
  const read = numberAt(main, start + currency.length)
  let unit = unitOf(main, read.end, currency.trim())
  if (!mark) return value(written, read.number, unit, read.half)

  const after = mark.index + mark[0].length
  const rest = written.slice(after)
  const gap = rest.length - rest.trimStart().length
  const width = numberAt(written, after + gap + (CURRENCY.exec(rest.trimStart())?.[0].length ?? 0))
  if (width.sign === '-') throw new NotationError('A tolerance is 0 or more.', after + gap)
  const widthUnit = unitOf(written, width.end, '')
  const relative = widthUnit === '%' && unit !== '%' && unit !== undefined
  if (!relative && widthUnit !== undefined) {
    if (unit !== undefined && unit !== widthUnit) {
      throw new NotationError(
        `The tolerance is in ${widthUnit}, the value in ${unit}: give both in ${unit}.`,
        width.end,
      )
    }
    unit = widthUnit
  }
  if (relative)
    return value(written, read.number, unit, (Math.abs(read.number) * width.number) / 100)
  const scale = width.scale === 0 ? read.scale : 0
  return value(
    written,
    read.number,
    unit,
    scale === 0 ? width.number : Number(`${width.number}e${scale}`),
  )
}

function value(
  written: string,
  number: number,
  unit: string | undefined,
  tolerance: number,
): Value {
  return unit === undefined ? { written, number, tolerance } : { written, number, unit, tolerance }
}

function numberAt(text: string, at: number): NumberRead {
  NUMBER.lastIndex = at
  const match = NUMBER.exec(text)
  const { sign, whole, decimals, power, raised, exponent, scale } = match?.groups ?? {}
  if (!match || (whole === undefined && decimals === undefined)) {
    throw new NotationError('A number was expected here, such as 9.8 N/kg ± 0.2.', at)
  }
  const end = at + match[0].length
  if (/^[.,]\d/.test(text.slice(end))) {
    throw new NotationError(
      'The number cannot be read: a point before decimals, as in 9.8, was expected.',
      end,
    )
  }
  const ten =
    Number((power ?? exponent ?? superscripts(raised)).replace(/[−–]/, '-')) +
    (SCALES[scale ?? ''] ?? 0)
  const digits = (whole ?? '0').replace(/\D/g, '') + (decimals ?? '')
  // Through the text of the number, so that 0.1 × 10^-3 is the nearest double to 0.0001.
  const size = Number(`${digits}e${ten}`)
  if (!Number.isFinite(size)) throw new NotationError('The number is too large to be read.', at)
  const negative = sign !== undefined && sign !== '+' && size !== 0
  const last = ten - Math.max((decimals ?? '').length - 1, 0)
  return {
    number: negative ? -size : size,
    half: Number(`5e${last - 1}`),
    sign: sign === undefined || sign === '+' ? '' : '-',
    scale: SCALES[scale ?? ''] ?? 0,
    end,
  }
}

function superscripts(raised = ''): string {
  const digits = [...raised]
    .filter((c) => SUPERSCRIPTS.includes(c))
    .map((c) => SUPERSCRIPTS.indexOf(c))
  return (raised.startsWith('⁻') ? '-' : '') + (digits.length > 0 ? digits.join('') : '0')
}

/** The unit from `at` to the end of `text`; `ahead` is a currency sign that stood before the number. */
function unitOf(text: string, at: number, ahead: string): string | undefined {
  const rest = text.slice(at)
  const start = at + rest.length - rest.trimStart().length
  const unit = rest.trim()
  if (RANGE.test(unit)) {
    throw new NotationError(
      'A range: write its middle, then ± and half its width, as in 6 m ± 1.',
      start,
    )
  }
  if (unit === '') return ahead === '' ? undefined : ahead
  if (PLUS_MINUS.test(unit))
    throw new NotationError('A second tolerance: one ± was expected.', start)
  const second = SECOND_NUMBER.exec(unit)
  if (second)
    throw new NotationError(
      'A second number: one number and its unit were expected.',
      start + second.index,
    )
  if (!UNIT.test(unit)) {
    throw new NotationError('A unit was expected here, such as N/kg, or nothing.', start)
  }
  return ahead === '' ? unit : `${ahead} ${unit}`
}
