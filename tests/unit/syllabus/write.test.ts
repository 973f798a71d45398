import fc from 'fast-check'
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readSyllabus, topicId, writeSyllabus, type Syllabus } from '../../../src/lib/syllabus'
import { syllabi } from './arbitrary'

const own = readFileSync(new URL('fixtures/format-example.yaml', import.meta.url), 'utf8')
const folder = new URL('../../../syllabi/', import.meta.url)
const shipped = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))

function readWhole(source: string): Syllabus {
  const read = readSyllabus(source)
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes, null, 2))
  return read.syllabus
}

describe('writing a syllabus', () => {
  test('what is written reads back equal', () => {
    fc.assert(
      fc.property(syllabi, (syllabus) => {
        expect(readWhole(writeSyllabus(syllabus))).toStrictEqual(syllabus)
      }),
      { numRuns: 200 },
    )
  })

  test.each([own, ...shipped])(
    'a real file, read, written and read again, is the same',
    (source) => {
      const syllabus = readWhole(source)
      const written = writeSyllabus(syllabus)
      expect(readWhole(written)).toStrictEqual(syllabus)
      expect(writeSyllabus(readWhole(written))).toBe(written)
    },
  )

  test('it looks as one would write it by hand', () => {
    const syllabus = readWhole(
      'format: 1\ntitle: Shore\ntopics: [{ title: A, points: [{ ref: "1", text: x, any: 1, ideas: [a / b, \'"c"\'] }, { ref: "2", text: "y: z" }] }]',
    )
    expect(writeSyllabus(syllabus)).toBe(
      [
        'format: 1',
        'title: Shore',
        'topics:',
        '  - title: A',
        '    points:',
        '      - ref: "1"',
        '        text: x',
        '        any: 1',
        '        ideas:',
        '          - a / b',
        '          - \'"c"\'',
        '',
        '      - ref: "2"',
        '        text: "y: z"',
        '',
      ].join('\n'),
    )
  })

  test('a syllabus frozen through and through is only read', () => {
    const freeze = (data: unknown): void => {
      if (typeof data !== 'object' || data === null) return
      Object.values(data).forEach(freeze)
      Object.freeze(data)
    }
    const syllabus = readWhole(own)
    freeze(syllabus)
    expect(() => writeSyllabus(syllabus)).not.toThrow()
  })

  test('it crosses to a worker and into storage unchanged', () => {
    const syllabus = readWhole(own)
    expect(structuredClone(syllabus)).toStrictEqual(syllabus)
    expect(JSON.parse(JSON.stringify(syllabus))).toStrictEqual(syllabus)
  })
})

describe('reading never throws', () => {
  const answered = (source: string) => {
    const read = readSyllabus(source)
    if (read.ok) return
    const lines = source.split('\n')
    expect(read.mistakes.length).toBeGreaterThan(0)
    for (const { line, column, message } of read.mistakes) {
      expect(line).toBeGreaterThanOrEqual(1)
      expect(line).toBeLessThanOrEqual(lines.length)
      expect(column).toBeGreaterThanOrEqual(1)
      expect(column).toBeLessThanOrEqual(lines[line - 1]!.length + 1)
      expect(message).not.toBe('')
    }
  }

  test('on any text', () => {
    const yaml = fc
      .array(
        fc.constantFrom(
          'format: 1\n',
          'title: a\n',
          'topics:\n',
          ' ',
          '\n',
          '- ',
          '? ',
          ': ',
          '[',
          ']',
          '{',
          '}',
          ',',
          '"',
          "'",
          '|\n',
          '>\n',
          '&a ',
          '*a',
          '!t ',
          '#',
          '%',
          '---\n',
          '\t',
          '\r\n',
          'points:\n',
          'ref: "1"\n',
          '<<: ',
          '__proto__: ',
        ),
        { maxLength: 40 },
      )
      .map((some) => some.join(''))
    fc.assert(fc.property(fc.oneof(yaml, fc.string(), fc.string({ unit: 'binary' })), answered), {
      numRuns: 1000,
    })
  })

  test('on a real file with characters put in, left out and moved', () => {
    const cut = fc.record({
      at: fc.nat(own.length),
      drop: fc.nat(30),
      put: fc.oneof(
        fc.string({ maxLength: 5 }),
        fc.constantFrom('"', "'", '[', '}', ': ', '\n', '\t', '- ', '(', ' / ', ' + ', '*x', '&x'),
      ),
    })
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), (cuts) => {
        answered(
          cuts.reduce(
            (source, { at, drop, put }) => source.slice(0, at) + put + source.slice(at + drop),
            own,
          ),
        )
      }),
      { numRuns: 400 },
    )
  })
})

test.each([
  { title: 'Longshore drift', id: 'longshore-drift' },
  { title: '  Shoreline Science, Level 2 ', id: 'shoreline-science-level-2' },
  { title: "Hooke's law", id: 'hookes-law' },
  { title: 'Élan & Ångström', id: 'elan-angstrom' },
  { title: '海岸 と 波', id: '海岸-と-波' },
  { title: 'が', id: 'が' },
  { title: '__proto__', id: 'proto' },
  { title: '!?', id: '' },
])('the id of "$title" is "$id"', ({ title: given, id }) => {
  expect(topicId(given)).toBe(id)
  expect(topicId(id)).toBe(id)
})
