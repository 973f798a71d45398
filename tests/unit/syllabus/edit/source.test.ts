import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addPoint,
  addTopic,
  allPoints,
  dropPoint,
  dropTopic,
  editSource,
  formOf,
  movePoint,
  movePointTo,
  moveTopic,
  readForm,
  readSyllabus,
  setPoint,
  setSyllabus,
  setTopic,
  writeSyllabus,
  type Syllabus,
  type SyllabusForm,
} from '../../../../src/lib/syllabus'
import { syllabi } from '../arbitrary'

const folder = new URL('../../../../syllabi/', import.meta.url)
const shipped = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name, source: readFileSync(new URL(name, folder), 'utf8') }))

function whole(source: string): Syllabus {
  const read = readSyllabus(source)
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes, null, 2))
  return read.syllabus
}

const MINE = `# My own syllabus: ask before you copy it.
format: 1
title: Shore   # as the course calls it
topics:
  # What moves the sand.
  - title: Drift
    points:
      - ref: '2.1'   # asked most years
        text: Waves come in at an angle.
        ideas: [waves / swash, at an angle] # two are enough
        reject:
          # said by many
          - waves come in straight

      # Needs the word itself.
      - ref: '2.2'
        text: >-
          Backwash runs straight down
          the beach.
        ideas:
          - '"backwash"' # the term
          - straight down
  # Last of all.
  - title: Pools
    points:
      - { ref: '3.1', text: Limpets graze. }
# The end.
`
const mine = formOf(whole(MINE))
const key = (ref: string) => allPoints(mine).find((point) => point.ref === ref)!.key
const edited = (form: SyllabusForm) => editSource(form, MINE)
const COMMENTS = MINE.match(/# ?[^\n]+/g)!

describe('a form says what the syllabus says', () => {
  test('of any syllabus', () => {
    fc.assert(
      fc.property(syllabi, (syllabus) => {
        expect(readForm(formOf(syllabus))).toMatchObject({ ok: true, syllabus })
      }),
      { numRuns: 150 },
    )
  })

  test.each(shipped)('of $name', ({ source }) => {
    const syllabus = whole(source)
    expect(readForm(formOf(syllabus))).toMatchObject({ ok: true, syllabus })
  })
})

describe('without a change the file comes back byte for byte', () => {
  test.each([
    ...shipped,
    { name: 'one with comments', source: MINE },
    { name: 'one from Windows', source: `\uFEFF${MINE.replaceAll('\n', '\r\n')}` },
  ])('$name', ({ source }) => {
    expect(editSource(formOf(whole(source)), source)).toBe(source)
  })

  test('any that was written here', () => {
    fc.assert(
      fc.property(syllabi, (syllabus) => {
        const source = writeSyllabus(syllabus)
        expect(editSource(formOf(syllabus), source)).toBe(source)
      }),
      { numRuns: 100 },
    )
  })
})

describe('a change keeps what was not changed as its author wrote it', () => {
  test('one text: one line is another', () => {
    const plain = MINE.replace(/(\S) {2,}#/g, '$1 #')
      .replace(/>-\n +(.*)\n +(.*)/, '$1 $2')
      .replace('{ ref', '{ref')
      .replace('. }', '.}')
    const form = setPoint(formOf(whole(plain)), key('2.1'), { text: 'Waves come at a slant.' })
    // Before a comment at the very end the library sets an empty line; empty lines say nothing.
    const lines = (source: string) => source.split('\n').filter((line) => line.trim() !== '')
    const was = lines(plain)
    const now = lines(editSource(form, plain))
    expect(now).toHaveLength(was.length)
    expect(now.filter((line, i) => line !== was[i])).toEqual([
      '        text: Waves come at a slant.',
    ])
  })

  test.each([
    { does: 'an idea is changed', form: setPoint(mine, key('2.1'), { ideas: ['waves', 'at an angle'] }) },
    { does: 'an idea is added', form: setPoint(mine, key('2.2'), { ideas: ['"backwash"', 'straight down', 'gravity'] }) },
    { does: 'a point is added', form: addPoint(mine, 't0').form, incomplete: true },
    { does: 'a point moves', form: movePoint(mine, key('2.1'), 1) },
    { does: 'a point goes to another topic', form: movePointTo(mine, key('2.1'), 't1') },
    { does: 'a topic moves', form: moveTopic(mine, 't0', 1) },
    { does: 'a topic is renamed', form: setTopic(mine, 't1', { title: 'Rock pools' }) },
    { does: 'the title is changed', form: setSyllabus(mine, { title: 'The shore' }) },
    { does: 'a caution is added', form: setTopic(mine, 't1', { caution: 'Ask about the tide.' }) },
    { does: 'a value is added', form: setPoint(mine, key('3.1'), { value: '9.8 N/kg ± 0.2' }) },
  ])('$does: every comment stays', ({ form, incomplete }) => {
    const whole = incomplete
      ? setPoint(form, allPoints(form).find(({ text }) => text === '')!.key, { text: 'New.' })
      : form
    const source = edited(whole)
    for (const comment of COMMENTS) expect(source).toContain(comment.trim())
    expect(readSyllabus(source)).toMatchObject({ ok: true })
    const read = readForm(whole)
    expect(read.ok && read.syllabus).toEqual(readSyllabus(source).ok && (readSyllabus(source) as { syllabus: Syllabus }).syllabus)
  }) // prettier-ignore

  test('what is dropped takes its own comments with it and no others', () => {
    const source = edited(dropPoint(mine, key('2.2')))
    expect(source).not.toContain('# the term')
    expect(source).toContain('# asked most years')
    expect(edited(dropTopic(mine, 't1'))).toContain('# two are enough')
  })

  test('folded texts, lists in brackets and line ends stay what they are', () => {
    const windows = MINE.replaceAll('\n', '\r\n')
    const form = setPoint(formOf(whole(windows)), key('3.1'), { text: 'Limpets graze algae.' })
    const source = editSource(form, windows)
    expect(source.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    expect(source).toMatch(/text: >-\r\n/)
    expect(source).toContain('[waves / swash, at an angle]')
  })

  test('any changes: the file says what the form says', () => {
    const steps = fc.array(fc.tuple(fc.nat(7), fc.nat(9), fc.string()), { maxLength: 8 })
    fc.assert(
      fc.property(syllabi, steps, (syllabus, ops) => {
        const base = `# kept\n${writeSyllabus(syllabus)}`
        const form = ops.reduce((now, [op, at, text]) => {
          const points = allPoints(now)
          const point = points[at % Math.max(1, points.length)]?.key ?? ''
          const topic = now.topics[at % Math.max(1, now.topics.length)]?.key ?? ''
          return [
            () => setPoint(now, point, { text: `${text} x` }),
            () => movePoint(now, point, 1),
            () => movePointTo(now, point, topic),
            () => dropPoint(now, point),
            () => moveTopic(now, topic, 1),
            () => setPoint(now, point, { reject: [`no ${text}`], steps: [] }),
            () => setTopic(addTopic(now).form, 'n1', { title: `Topic ${text} z` }),
            () => setTopic(now, topic, { caution: text }),
          ][op]!()
        }, formOf(syllabus))
        const source = editSource(form, base)
        const read = readForm(form)
        const again = readSyllabus(source)
        expect(again.ok).toBe(read.ok)
        if (read.ok && again.ok) expect(again.syllabus).toStrictEqual(read.syllabus)
      }),
      { numRuns: 150 },
    )
  })
})

describe('mistakes stand at their fields, in the words of a file’s mistakes', () => {
  const p = (fields: Parameters<typeof setPoint>[2]) => setPoint(mine, key('2.1'), fields)
  test.each([
    { form: setSyllabus(mine, { title: '' }), at: 'title', says: /Nothing stands here/ },
    { form: setTopic(mine, 't1', { title: '' }), at: 'topics/1/title', says: /Nothing stands here/ },
    { form: setTopic(mine, 't1', { title: 'a\nb' }), at: 'topics/1/title', says: /One line was expected/ },
    { form: p({ ref: '' }), at: 'topics/0/points/0/ref', says: /Nothing stands here/ },
    { form: p({ ref: '3.1' }), at: 'topics/1/points/0/ref', says: /^The ref 3\.1 is taken: each/ },
    { form: p({ ref: '3.1' }), at: 'topics/0/points/0/ref', says: /^The ref 3\.1 is taken: each/ },
    { form: setTopic(addTopic(mine).form, 'n1', { title: 'Pools' }), at: 'topics/2/title', says: /taken by another topic: give/ },
    { form: p({ ideas: ['waves', '(angle'] }), at: 'topics/0/points/0/ideas/1', says: /bracket/ },
    { form: p({ ideas: ['waves', ''] }), at: 'topics/0/points/0/ideas/1', says: /Nothing stands here/ },
    { form: p({ any: '3' }), at: 'topics/0/points/0/any', says: /asks for 3 ideas, but there are only 2/ },
    { form: p({ any: 'two' }), at: 'topics/0/points/0/any', says: /whole number/ },
    { form: p({ value: 'fast' }), at: 'topics/0/points/0/value', says: /A number was expected/ },
    { form: p({ equation: 'v = f × λ' }), at: 'topics/0/points/0/equation', says: /"where" is missing/ },
    { form: p({ equation: 'v = f', where: [{ symbol: 'v', words: 'speed' }, { symbol: 'f', words: '/' }] }), at: 'topics/0/points/0/where/1', says: /Nothing stands here|a word was expected/ },
    { form: p({ equation: 'v = f', where: [{ symbol: 'v', words: 'a' }, { symbol: 'v', words: 'b' }, { symbol: 'f', words: 'c' }] }), at: 'topics/0/points/0/where/1', says: /second time/ },
    { form: p({ steps: ['measure'] }), at: 'topics/0/points/0/ideas', says: /cannot be in one point/ },
    { form: dropTopic(dropTopic(mine, 't0'), 't1'), at: 'topics', says: /The list is empty/ },
    { form: dropPoint(mine, key('3.1')), at: 'topics/1/points', says: /The list is empty/ },
  ])('$at: $says', ({ form, at, says }) => {
    const read = readForm(form)
    expect(read.ok ? [] : [...read.mistakes.keys()]).toContain(at)
    expect(read.ok ? '' : read.mistakes.get(at)).toMatch(says)
  }) // prettier-ignore
})

test('a syllabus that is renamed keeps its id in its file', () => {
  const source = edited(setSyllabus(mine, { title: 'Coast' }))
  expect(whole(source)).toMatchObject({ id: 'shore', title: 'Coast' })
  expect(whole(writeSyllabus(whole(source)))).toStrictEqual(whole(source))
})
