import fc from 'fast-check'
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  readIdea,
  readSyllabus,
  readValue,
  readWordings,
  topicId,
  writeSyllabus,
  type Equation,
  type Point,
  type Syllabus,
  type Topic,
} from '../../../src/lib/syllabus'

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

// Texts that YAML would take for something else, or that need quotes, next to any text at all.
const awkward = fc.constantFrom(
  'null', '~', 'true', 'no', '2.10', '1e3', '0x1F', '- a', '? a', 'a: b', 'a #b', '#', '*a', '&a', '!a', '%a', '@a', '`a`',
  '[a]', '{a}', '"a"', "'a'", 'a\nb', '  a\n b', 'a\n\n\nb', 'a \n', '|', '>', '---', '...', '<<', 'Ünïcödé 海岸 🌊', 'a\tb', '\u2028a\u0085b',
  '\ud800', '\uFEFFa', `${'long '.repeat(60)}end`,
) // prettier-ignore
const text = fc
  .oneof(awkward, fc.string({ minLength: 1 }), fc.string({ minLength: 1, unit: 'binary' }))
  .map((some) => some.trim().replaceAll('\0', ''))
  .filter((some) => some.trim() === some && some !== '')
const line = text
  .map((some) =>
    some
      .replace(/[\n\r]+/g, ' ')
      .slice(0, 150)
      .trim(),
  )
  .filter((some) => some !== '')
const title = line.filter((some) => topicId(some) !== '')

const idea = fc
  .constantFrom(
    'gravity',
    'waves / swash',
    '"backwash" / back-wash',
    'mark + pebble',
    '(at the) waterline',
    'oblique(ly)',
    'Na+ ions',
    'true',
    '# / *',
    "water's edge",
  )
  .map(readIdea)
const ideas = fc.array(idea, { minLength: 1, maxLength: 4 })
const value = fc
  .constantFrom('9.8 N/kg ± 0.2', '1.30', '-20 °C', '3.0 × 10^8 m/s ± 0.1 × 10^8', '50 % ± 5')
  .map(readValue)
const equation = fc.constantFrom<Equation>(
  {
    written: 'v = f × λ',
    kind: 'algebraic' as const,
    where: {
      v: readWordings('(wave) speed / "celerity"'),
      f: readWordings('frequency'),
      λ: readWordings('wavelength'),
    },
  },
  {
    written: 'n = y + 1',
    kind: 'algebraic' as const,
    where: { n: readWordings('no'), y: readWordings('yes') },
  },
  { written: '2Br⁻ → Br₂ + 2e⁻', kind: 'chemical' as const, where: {} },
)
const reject = fc.array(text, { minLength: 1, maxLength: 2 })
const said = fc
  .record({ ideas, value, equation, reject }, { requiredKeys: [] })
  .chain((some) =>
    some.ideas
      ? fc
          .option(fc.integer({ min: 1, max: some.ideas.length }), { nil: undefined })
          .map((any) => (any === undefined ? some : { ...some, any }))
      : fc.constant(some),
  )
  .map((some) => ({ ideas: [], ...some }))
const method = fc
  .record({ steps: ideas, reject }, { requiredKeys: ['steps'] })
  .map((some) => ({ ideas: [], ...some }))
const point = fc
  .tuple(line, text, fc.oneof(said, method))
  .map(([ref, words, rest]): Point => ({ ref, text: words, ...rest }))

const topic = fc
  .record(
    {
      title,
      caution: text,
      ownId: fc.constantFrom('own-id', 'own-id-2', '海岸'),
      points: fc.array(point, { minLength: 1, maxLength: 3 }),
    },
    { requiredKeys: ['title', 'points'] },
  )
  .map(({ ownId, ...rest }): Topic => ({ id: ownId ?? topicId(rest.title), ...rest }))

const syllabi = fc
  .record(
    {
      title,
      note: text,
      topics: fc.uniqueArray(topic, { selector: ({ id }) => id, minLength: 1, maxLength: 3 }),
    },
    { requiredKeys: ['title', 'topics'] },
  )
  .map(({ topics, ...rest }): Syllabus => {
    const refs = new Set<string>()
    const unique = topics.map((one) => ({
      ...one,
      points: one.points.map((each, i) => {
        const ref = refs.has(each.ref) ? `${one.id}.${i}` : each.ref
        refs.add(ref)
        return { ...each, ref }
      }),
    }))
    return { format: 1, id: topicId(rest.title), ...rest, topics: unique }
  })
  .filter(({ topics }) => {
    const refs = topics.flatMap(({ points }) => points.map(({ ref }) => ref))
    return new Set(refs).size === refs.length
  })

describe('writing a syllabus', () => {
  test('what is written reads back equal', () => {
    fc.assert(
      fc.property(syllabi, (syllabus) => {
        expect(readWhole(writeSyllabus(syllabus))).toStrictEqual(syllabus)
      }),
      { numRuns: 500 },
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
      numRuns: 3000,
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
      { numRuns: 1000 },
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
