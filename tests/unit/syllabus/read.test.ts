import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readIdea, readSyllabus, readWordings } from '../../../src/lib/syllabus'

const file = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8')

describe("the format's own example", () => {
  const read = readSyllabus(file('fixtures/format-example.yaml'))
  const syllabus = read.ok ? read.syllabus : undefined
  const points = syllabus?.topics[0]?.points ?? []

  test('is read whole', () => {
    expect(read).toMatchObject({ ok: true })
    expect(syllabus).toMatchObject({
      format: 1,
      id: 'shoreline-science-level-2',
      title: 'Shoreline Science, Level 2',
      note: 'Written for this project.',
    })
    expect(syllabus?.topics.map(({ id, title, caution }) => ({ id, title, caution }))).toEqual([
      { id: 'longshore-drift', title: 'Longshore drift', caution: '…' },
    ])
    expect(points.map(({ ref }) => ref)).toEqual(['2.1', '2.2', '2.3', '2.4', '2.5', '2.6', '2.7'])
  })

  test.each([
    {
      at: 0,
      point: {
        ref: '2.1',
        text: 'Waves reach the beach at an angle because of the prevailing wind.',
        ideas: [
          'waves / swash',
          'at an angle / oblique(ly) / diagonal(ly)',
          'prevailing wind / dominant wind',
        ].map(readIdea),
        reject: ['waves arrive parallel to the beach'],
      },
    },
    {
      at: 1,
      point: {
        ref: '2.2',
        text: 'Backwash runs straight down the beach under gravity.',
        ideas: ['"backwash"', 'straight down / at right angles / perpendicular', 'gravity'].map(
          readIdea,
        ),
      },
    },
    {
      at: 2,
      point: {
        ref: '2.3',
        text: 'Name two structures that slow longshore drift.',
        any: 2,
        ideas: ['groyne', 'breakwater / jetty', 'rock armour / riprap / rip-rap', 'sea wall'].map(
          readIdea,
        ),
      },
    },
    {
      at: 3,
      point: {
        ref: '2.4',
        text: 'Wave speed is frequency times wavelength.',
        ideas: [],
        equation: {
          written: 'v = f × λ',
          kind: 'algebraic',
          where: {
            v: readWordings('wave speed / speed'),
            f: readWordings('frequency'),
            λ: readWordings('wavelength / lambda'),
          },
        },
      },
    },
    {
      at: 4,
      point: {
        ref: '2.5',
        text: 'The gravitational field strength at the surface is 9.8 N/kg.',
        ideas: [readIdea('gravitational field strength / g')],
        value: { written: '9.8 N/kg ± 0.2', number: 9.8, unit: 'N/kg', tolerance: 0.2 },
      },
    },
    {
      at: 5,
      point: {
        ref: '2.6',
        text: 'Measuring drift with a marked pebble.',
        ideas: [],
        steps: [
          'paint / mark + pebble',
          'place / drop + (at the) waterline',
          'measure / record + distance',
          'after / every + (fixed) time',
        ].map(readIdea),
      },
    },
    {
      at: 6,
      point: {
        ref: '2.7',
        text: 'A spit forms where the coastline changes direction and drift carries on in open water.',
        ideas: [],
      },
    },
  ])('point $point.ref', ({ at, point }) => {
    expect(points[at]).toStrictEqual(point)
  })
})

describe('the syllabus files that ship with the app', () => {
  const folder = new URL('../../../syllabi/', import.meta.url)
  const names = readdirSync(folder).filter((name) => /\.ya?ml$/.test(name))

  test('there are some', () => expect(names).not.toEqual([]))

  test.each(names)('%s has no mistake', (name) => {
    const read = readSyllabus(readFileSync(new URL(name, folder), 'utf8'))
    expect(read.ok ? [] : read.mistakes).toEqual([])
  })
})

describe('what a hand-written file may look like', () => {
  const point = (fields: string) =>
    readSyllabus(
      `format: 1\ntitle: T\ntopics: [{ title: A, points: [{ ref: "1", text: x, ${fields} }] }]`,
    )
  const pointOf = (fields: string) => {
    const read = point(fields)
    return read.ok ? read.syllabus.topics[0]?.points[0] : read.mistakes
  }

  test('a value without quotes keeps its digits, and with them its tolerance', () => {
    expect(pointOf('value: 1.30')).toMatchObject({
      value: { written: '1.30', number: 1.3, tolerance: 0.005 },
    })
  })

  test('words that YAML takes for something else stay words', () => {
    expect(pointOf('ideas: [yes / no, 32, true]')).toMatchObject({
      ideas: [{ written: 'yes / no' }, { written: '32' }, { written: 'true' }],
    })
  })

  test('a chemical equation needs no where', () => {
    expect(pointOf('equation: 2Br⁻ → Br₂ + 2e⁻')).toMatchObject({
      equation: { written: '2Br⁻ → Br₂ + 2e⁻', kind: 'chemical', where: {} },
    })
  })

  test('ideas beside an equation or a value', () => {
    expect(pointOf('ideas: [speed], value: 340 m/s')).toMatchObject({
      ideas: [{}],
      value: { number: 340 },
    })
    expect(pointOf('ideas: [speed], equation: v = s, where: { v: a, s: b }')).toMatchObject({
      ideas: [{}],
      equation: { kind: 'algebraic' },
    })
  })

  test('a cue, taken as it is written', () => {
    expect(pointOf('cue: " 2.10 or more? "')).toMatchObject({ cue: '2.10 or more?' })
    expect(pointOf('cue: 2.10')).toMatchObject({ cue: '2.10' })
    expect(pointOf('ideas: [speed]')).not.toHaveProperty('cue')
  })

  test('steps with reject', () => {
    expect(pointOf('steps: [mark, measure], reject: [guess]')).toMatchObject({
      steps: [{ written: 'mark' }, { written: 'measure' }],
      reject: ['guess'],
    })
  })

  test('an id of its own, folded text, a byte-order mark and Windows line ends', () => {
    const read = readSyllabus(
      '\uFEFFformat: 1\r\ntitle: Élan vital\r\ntopics:\r\n- id: own-id\r\n  title: A\r\n  points:\r\n  - ref: "1"\r\n    text: >\r\n      one\r\n      two\r\n',
    )
    expect(read).toMatchObject({
      ok: true,
      syllabus: { id: 'elan-vital', topics: [{ id: 'own-id', points: [{ text: 'one two' }] }] },
    })
  })
})
