import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NotationError, readValue } from '../../../src/lib/syllabus'

describe('a value', () => {
  test.each([
    { written: '9.8 N/kg ± 0.2', number: 9.8, unit: 'N/kg', tolerance: 0.2 },
    { written: '9.8 ± 0.2 N/kg', number: 9.8, unit: 'N/kg', tolerance: 0.2 },
    { written: '9.8 N/kg ± 0.2 N/kg', number: 9.8, unit: 'N/kg', tolerance: 0.2 },
    { written: '9.8 N/kg +/- 0.2', number: 9.8, unit: 'N/kg', tolerance: 0.2 },
    { written: '9.8 N/kg +- 0.2', number: 9.8, unit: 'N/kg', tolerance: 0.2 },
    { written: '7 items ± 2', number: 7, unit: 'items', tolerance: 2 },
    { written: '10 °C ± 0.5', number: 10, unit: '°C', tolerance: 0.5 },
    { written: '25.0 cm³ ± 0.1', number: 25, unit: 'cm³', tolerance: 0.1 },
    { written: '340 m/s ± 10', number: 340, unit: 'm/s', tolerance: 10 },
    { written: '3.0 × 10^8 m/s ± 0.1 × 10^8', number: 3e8, unit: 'm/s', tolerance: 1e7 },
    { written: '50 % ± 5', number: 50, unit: '%', tolerance: 5 },
    { written: '50% ± 5%', number: 50, unit: '%', tolerance: 5 },
    { written: '50 ± 5 %', number: 50, unit: '%', tolerance: 5 },
    { written: '200 N ± 2 %', number: 200, unit: 'N', tolerance: 4 },
    { written: '4.6 billion years ± 0.1', number: 4.6e9, unit: 'years', tolerance: 1e8 },
    { written: '4.6 billion years ± 50 million', number: 4.6e9, unit: 'years', tolerance: 5e7 },
    { written: '£5 ± 1', number: 5, unit: '£', tolerance: 1 },
    { written: '9.8 N/kg ± 0', number: 9.8, unit: 'N/kg', tolerance: 0 },
  ])('$written', ({ written, ...rest }) => {
    expect(readValue(written)).toEqual({ written, ...rest })
  })

  test.each([
    { written: '32 bits', number: 32, unit: 'bits', tolerance: 0.5 },
    { written: '340 m/s', number: 340, unit: 'm/s', tolerance: 0.5 },
    { written: '0.10 cm³', number: 0.1, unit: 'cm³', tolerance: 0.005 },
    { written: '1.33', number: 1.33, tolerance: 0.005 },
    { written: '.5 m', number: 0.5, unit: 'm', tolerance: 0.05 },
    { written: '-20 °C', number: -20, unit: '°C', tolerance: 0.5 },
    { written: '−20 °C', number: -20, unit: '°C', tolerance: 0.5 },
    { written: '-0 °C', number: 0, unit: '°C', tolerance: 0.5 },
    { written: '1,025 kg/m³', number: 1025, unit: 'kg/m³', tolerance: 0.5 },
    { written: '300 000 km/s', number: 300_000, unit: 'km/s', tolerance: 0.5 },
    { written: '3.0 × 10^8 m/s', number: 3e8, unit: 'm/s', tolerance: 5e6 },
    { written: '3.0 x 10⁸ m/s', number: 3e8, unit: 'm/s', tolerance: 5e6 },
    { written: '3.0e8 m/s', number: 3e8, unit: 'm/s', tolerance: 5e6 },
    { written: '1.6 × 10⁻¹⁹ C', number: 1.6e-19, unit: 'C', tolerance: 5e-21 },
    { written: '6.5 m s⁻¹', number: 6.5, unit: 'm s⁻¹', tolerance: 0.05 },
    { written: '9.81 m/s^2', number: 9.81, unit: 'm/s^2', tolerance: 0.005 },
    { written: '5 eV', number: 5, unit: 'eV', tolerance: 0.5 },
    { written: '2 million tonnes', number: 2e6, unit: 'tonnes', tolerance: 5e5 },
  ])('$written: half a unit of the last digit', ({ written, ...rest }) => {
    expect(readValue(written)).toEqual({ written, ...rest })
  })

  test.each([
    { written: '', offset: 0, says: 'A number was expected' },
    { written: 'about 5 m', offset: 0, says: 'A number was expected' },
    { written: '5 m ±', offset: 5, says: 'A number was expected' },
    { written: '± 2', offset: 0, says: 'A number was expected' },
    { written: '9,8 N/kg', offset: 1, says: 'a point before decimals' },
    { written: '1.2.3 m', offset: 3, says: 'a point before decimals' },
    { written: '5 to 7 m', offset: 2, says: 'A range' },
    { written: '5–7 m', offset: 1, says: 'A range' },
    { written: '5-7 m', offset: 1, says: 'A range' },
    { written: '5 m 3 cm', offset: 4, says: 'A second number' },
    { written: '5 m ± 1 ± 2', offset: 8, says: 'A second tolerance' },
    { written: '5 m ± -1', offset: 6, says: '0 or more' },
    { written: '1.0 m ± 5 cm', offset: 9, says: 'give both in m' },
    { written: '10^8 m/s', offset: 2, says: 'A unit was expected' },
    { written: '5 = 5', offset: 4, says: 'A second number' },
    { written: '1e999 m', offset: 0, says: 'too large' },
  ])('refused: $written', ({ written, offset, says }) => {
    try {
      readValue(written)
    } catch (error) {
      expect(error).toBeInstanceOf(NotationError)
      expect((error as NotationError).message).toContain(says)
      expect((error as NotationError).offset).toBe(offset)
      return
    }
    expect.unreachable('read without a mistake')
  })

  test('any decimal is read to the double it names, its tolerance half its last place', () => {
    fc.assert(
      fc.property(fc.integer({ min: -99_999, max: 99_999 }), fc.nat(4), (digits, places) => {
        const written = (digits / 10 ** places).toFixed(places)
        const { number, tolerance } = readValue(`${written} m`)
        expect(number).toBe(Number(written) + 0)
        expect(tolerance).toBeCloseTo(0.5 / 10 ** places, 12)
      }),
    )
  })

  test('any text is read or refused, with the place inside it', () => {
    const scraps = fc
      .array(
        fc.constantFrom(
          '±',
          '+/-',
          ' ',
          '5',
          '1,000',
          '.',
          '× 10',
          '^8',
          'e',
          'm',
          '/s',
          '%',
          '£',
          '-',
          'million',
        ),
      )
      .map((some) => some.join(''))
    fc.assert(
      fc.property(fc.oneof(scraps, fc.string()), (text) => {
        try {
          const { number, tolerance } = readValue(text)
          expect(Number.isFinite(number)).toBe(true)
          expect(tolerance).toBeGreaterThanOrEqual(0)
        } catch (error) {
          if (!(error instanceof NotationError)) throw error
          expect(error.offset).toBeGreaterThanOrEqual(0)
          expect(error.offset).toBeLessThanOrEqual(text.length)
        }
      }),
      { numRuns: 2000 },
    )
  })
})
