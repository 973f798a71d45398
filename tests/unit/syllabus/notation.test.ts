import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  NotationError,
  readIdea,
  readWording,
  readWordings,
  writeIdea,
  writeWordings,
  type Wording,
} from '../../../src/lib/syllabus'

/** A wording in short: `[at] [the] waterline`, `oblique~ly`, `!backwash` for an exact term. */
function short({ words, exact }: Wording): string {
  const slots = words.map(({ text, optional, suffix }) =>
    optional ? `[${text}]` : suffix === undefined ? text : `${text}~${suffix}`,
  )
  return (exact ? '!' : '') + slots.join(' ')
}
const shorts = (written: string) => readIdea(written).parts.map((part) => part.wordings.map(short))

function fault(read: () => unknown): { offset: number; message: string } {
  try {
    read()
  } catch (error) {
    if (error instanceof NotationError) return { offset: error.offset, message: error.message }
    throw error
  }
  throw new Error('read without a mistake')
}

describe('an idea', () => {
  test.each([
    { idea: 'gravity', parts: [['gravity']] },
    { idea: 'waves / swash', parts: [['waves', 'swash']] },
    { idea: 'waves/ swash', parts: [['waves', 'swash']] },
    { idea: 'groyne/breakwater', parts: [['groyne', 'breakwater']] },
    { idea: 'rock armour / riprap / rip-rap', parts: [['rock armour', 'riprap', 'rip-rap']] },
    {
      idea: 'at an angle / oblique(ly) / diagonal(ly)',
      parts: [['at an angle', 'oblique~ly', 'diagonal~ly']],
    },
    { idea: 'oblique(ly)/diagonal(ly)', parts: [['oblique~ly', 'diagonal~ly']] },
    { idea: 'strong(er) swash', parts: [['strong~er swash']] },
    { idea: 'build(s) (up) the beach', parts: [['build~s [up] the beach']] },
    { idea: '(at the) waterline', parts: [['[at] [the] waterline']] },
    { idea: '(online) games', parts: [['[online] games']] },
    { idea: 'receipt (is) confirmed', parts: [['receipt [is] confirmed']] },
    { idea: '"backwash"', parts: [['!backwash']] },
    { idea: '“backwash”', parts: [['!backwash']] },
    { idea: '"multi-store model"', parts: [['!multi-store model']] },
    { idea: '"swash" / rush of water', parts: [['!swash', 'rush of water']] },
    { idea: '(the) "backwash" / "undertow"', parts: [['![the] backwash', '!undertow']] },
    { idea: 'paint / mark + pebble', parts: [['paint', 'mark'], ['pebble']] },
    { idea: 'paint+pebble', parts: [['paint'], ['pebble']] },
    {
      idea: 'place / drop + (at the) waterline + again',
      parts: [['place', 'drop'], ['[at] [the] waterline'], ['again']],
    },
    { idea: '"A / B + C"', parts: [['!A / B + C']], why: 'nothing parts inside quotes' },
    { idea: '"f(x)"', parts: [['!f(x)']], why: 'brackets inside quotes are letters' },
    { idea: '(sea / cliff) wall', parts: [['[sea] [cliff] wall']] },
    { idea: 'erosion – by waves', parts: [['erosion by waves']], why: 'a dash is no word' },
    { idea: "water's edge", parts: [["water's edge"]] },
    { idea: 'Strand / 海岸 + 波浪', parts: [['Strand', '海岸'], ['波浪']] },
    { idea: 'swash,  then\tbackwash', parts: [['swash, then backwash']] },
  ])('$idea', ({ idea, parts }) => {
    expect(shorts(idea)).toEqual(parts)
    expect(readIdea(idea).written).toBe(idea)
  })
})

describe('a / or + that belongs to a word', () => {
  test.each([
    { idea: '9.8 N/kg', parts: [['9.8 N/kg']] },
    { idea: 'kg/m³ / g/cm3', parts: [['kg/m³', 'g/cm3']] },
    { idea: 'm/s^2', parts: [['m/s^2']] },
    { idea: 'beats/minute', parts: [['beats/minute']] },
    { idea: 'N / kg', parts: [['N', 'kg']], why: 'with spaces it always parts' },
    { idea: 'wind and/or waves', parts: [['wind and/or waves']] },
    { idea: '1/2 of it', parts: [['1/2 of it']] },
    { idea: 'I/O device', parts: [['I/O device']] },
    { idea: 'CO2/carbon dioxide', parts: [['CO2', 'carbon dioxide']] },
    { idea: 'Na+', parts: [['Na+']] },
    { idea: 'Na+ ions', parts: [['Na+ ions']] },
    { idea: 'Na+ + Cl-', parts: [['Na+'], ['Cl-']] },
    { idea: 'Na+/K+', parts: [['Na+', 'K+']] },
    { idea: 'Ca2+ / calcium ion', parts: [['Ca2+', 'calcium ion']] },
    { idea: '2e- + 2H+', parts: [['2e-'], ['2H+']] },
    { idea: 'charge of +2', parts: [['charge of +2']] },
    { idea: 'C++', parts: [['C++']] },
    { idea: '"salt" +water', parts: [['!salt'], ['water']] },
  ])('$idea', ({ idea, parts }) => {
    expect(shorts(idea)).toEqual(parts)
  })
})

describe('a mistake', () => {
  test.each([
    { idea: '', offset: 0, says: 'a word was expected' },
    { idea: '   ', offset: 3, says: 'a word was expected' },
    { idea: '–', offset: 1, says: 'a word was expected' },
    { idea: 'waves / / swash', offset: 8, says: 'a word was expected' },
    { idea: '/ swash', offset: 0, says: 'a word was expected' },
    { idea: 'waves /', offset: 7, says: 'a word was expected' },
    { idea: 'paint + + pebble', offset: 8, says: 'a word was expected' },
    { idea: 'paint +', offset: 7, says: 'a word was expected' },
    { idea: 'waves / + swash', offset: 8, says: 'a word was expected' },
    { idea: 'the "backwash', offset: 4, says: 'never closed' },
    { idea: 'backwash”', offset: 8, says: 'never opened' },
    { idea: '""', offset: 0, says: 'between the quotation marks' },
    { idea: 'oblique(ly', offset: 7, says: 'never closed' },
    { idea: 'oblique)ly', offset: 7, says: 'never opened' },
    { idea: 'a (b (c) d)', offset: 5, says: 'within a bracket' },
    { idea: 'sea () wall', offset: 4, says: 'between the brackets' },
    { idea: '(at the)', offset: 1, says: 'nothing is needed' },
    { idea: 'beach / (the)', offset: 9, says: 'nothing is needed' },
    { idea: 'the "backwash" zone', offset: 0, says: 'one whole alternative' },
    { idea: '"back" "wash"', offset: 7, says: 'one whole alternative' },
    { idea: '(re)use', offset: 0, says: 'in front of part of a word' },
    { idea: 'colo(u)r', offset: 7, says: 'inside a word' },
    { idea: 'strong(er swash)', offset: 10, says: 'holds its ending' },
    { idea: '(paint + mark) pebble', offset: 7, says: 'A + inside brackets' },
    { idea: 'sea ("cliff") wall', offset: 5, says: 'Quotation marks inside brackets' },
  ])('$idea: $says', ({ idea, offset, says }) => {
    const { message, offset: at } = fault(() => readIdea(idea))
    expect(message).toContain(says)
    expect(at).toBe(offset)
  })

  test('wordings take no +, one wording takes no /', () => {
    expect(fault(() => readWordings('wave + speed')).offset).toBe(5)
    expect(fault(() => readWording('wave speed / speed')).offset).toBe(11)
    expect(readWordings('wave speed / speed').map(short)).toEqual(['wave speed', 'speed'])
    expect(short(readWording('(wave) speed'))).toBe('[wave] speed')
  })
})

describe('writing', () => {
  const word = fc.constantFrom(
    'swash',
    'up',
    'the',
    'N/kg',
    'Na+',
    'C++',
    'rip-rap',
    '9.8',
    '海岸',
    'A',
  )
  const needed = fc.record({ text: word, optional: fc.constant(false) })
  const ending = fc.record({
    text: word,
    optional: fc.constant(false),
    suffix: fc.constantFrom('s', 'ing'),
  })
  const optional = fc.record({ text: word, optional: fc.constant(true) })
  const plain = fc
    .tuple(fc.array(fc.oneof(optional, needed, ending), { maxLength: 4 }), needed)
    .chain(([slots, one]) =>
      fc.nat(slots.length).map((at) => [...slots.slice(0, at), one, ...slots.slice(at)]),
    )
    .map((words) => ({ words, exact: false }))
  const exact = fc
    .tuple(fc.array(optional, { maxLength: 2 }), fc.array(needed, { minLength: 1, maxLength: 3 }))
    .map(([before, words]) => ({ words: [...before, ...words], exact: true }))
  const wordings = fc.array(fc.oneof(plain, exact), { minLength: 1, maxLength: 3 })
  const parts = fc.array(fc.record({ wordings }), { minLength: 1, maxLength: 3 })

  test('what is written reads back to the same parts', () => {
    fc.assert(
      fc.property(parts, (some) => {
        expect(readIdea(writeIdea({ parts: some })).parts).toEqual(some)
      }),
    )
    fc.assert(
      fc.property(wordings, (some) => {
        expect(readWordings(writeWordings(some))).toEqual(some)
      }),
    )
  })

  const scraps = fc
    .array(
      fc.constantFrom(
        '/',
        '+',
        ' ',
        '(',
        ')',
        '"',
        '“',
        '”',
        'a',
        'swash',
        'kg',
        '2',
        'ly',
        '-',
        ',',
        '.',
        'Na',
      ),
    )
    .map((some) => some.join(''))

  test('any text is read or refused within itself, and what was read survives writing', () => {
    fc.assert(
      fc.property(fc.oneof(scraps, fc.string(), fc.string({ unit: 'binary' })), (text) => {
        try {
          const { parts: read } = readIdea(text)
          expect(readIdea(writeIdea({ parts: read })).parts).toEqual(read)
        } catch (error) {
          if (!(error instanceof NotationError)) throw error
          expect(error.offset).toBeGreaterThanOrEqual(0)
          expect(error.offset).toBeLessThanOrEqual(text.length)
        }
      }),
      { numRuns: 1000 },
    )
  })
})
