import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { mark } from '../../../src/lib/marking'
import { readSyllabus, type Topic } from '../../../src/lib/syllabus'
import { examineTopic, findingWords, type Finding } from '../../../src/lib/view/findings'

function topicOf(points: string, title = 'The shore'): Topic {
  const read = readSyllabus(
    `format: 1\ntitle: Examples\ntopics:\n  - title: ${title}\n    points:\n${points}`,
  )
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes))
  return read.syllabus.topics[0]!
}
const found = (points: string, title?: string) =>
  examineTopic(topicOf(points, title), mark).findings.map(({ kind, ref }) => `${kind} ${ref}`)

describe('what is found in the points of a topic', () => {
  test.each([
    {
      why: 'a sound topic has no findings',
      points: `
      - { ref: "1", text: Groynes trap sand., ideas: [groyne, trap / catch, sand] }
      - { ref: "2", text: Limpets clamp down at low tide., ideas: [limpet, clamp, low tide] }\n`,
      finds: [],
    },
    {
      why: 'an idea that its text does not say',
      points: `      - { ref: "1", text: Groynes trap sand., ideas: [groyne, trap, pebble] }\n`,
      finds: ['text-short 1'],
    },
    {
      why: 'a list that asks is not expected to answer',
      points: `      - { ref: "1", text: Name two structures., any: 2, ideas: [groyne, jetty, sea wall] }\n`,
      finds: [],
    },
    {
      why: 'ruled out by what loses it',
      points: `      - { ref: "1", text: Groynes trap sand., ideas: [groyne, trap, sand], reject: [groynes trap sand] }\n`,
      finds: ['never-full 1'],
    },
    {
      why: 'an idea that the title says',
      title: 'Groynes',
      points: `      - { ref: "1", text: Groynes trap sand., ideas: [groyne, trap, sand] }\n`,
      finds: ['given-away 1'],
    },
    {
      why: 'two with the same ideas',
      points: `
      - { ref: "1", text: Groynes trap sand., ideas: [groyne, sand] }
      - { ref: "2", text: Sand is held by a groyne., ideas: [sand, groyne] }\n`,
      finds: ['alike 2'],
    },
    {
      why: 'one that another says along with more',
      points: `
      - { ref: "1", text: Groynes trap sand., ideas: [groyne, sand] }
      - { ref: "2", text: Groynes trap sand and widen the beach., ideas: [groyne, sand, widen] }\n`,
      finds: ['said-by 1'],
    },
  ])('$why', ({ points, title, finds }) => {
    expect(found(points, title)).toEqual(finds)
  })

  test('ideas that are drafted are told, in the notation', () => {
    const { drafted } = examineTopic(
      topicOf('      - { ref: "1", text: Limpets graze algae. }\n      - { ref: "2", text: x y, ideas: [x] }\n'),
      mark,
    ) // prettier-ignore
    expect(Object.keys(drafted)).toEqual(['1'])
    expect(drafted['1']!.length).toBeGreaterThan(0)
  })
})

// Every shipped point is marked by its own words elsewhere; here: the examination says the same of it.
const folder = new URL('../../../syllabi/', import.meta.url)
test.each(readdirSync(folder).filter((name) => name.endsWith('.yaml')))(
  'no point of %s can never be full',
  (name) => {
    const read = readSyllabus(readFileSync(new URL(name, folder), 'utf8'))
    if (!read.ok) throw new Error('It has mistakes.')
    const never = read.syllabus.topics.flatMap((topic) =>
      examineTopic(topic, mark).findings.filter(({ kind }) => kind === 'never-full'),
    )
    expect(never).toEqual([])
  },
)

test.each<{ finding: Finding; says: RegExp }>([
  { finding: { kind: 'never-full', ref: '1', why: 'You wrote x.' }, says: /never be full.*You wrote x\./ },
  { finding: { kind: 'text-short', ref: '1', missing: ['a', 'b'] }, says: /does not say: a and b\./ },
  { finding: { kind: 'given-away', ref: '1', idea: 'groyne' }, says: /“groyne” away/ },
  { finding: { kind: 'alike', ref: '1', other: '2' }, says: /told apart from 2/ },
  { finding: { kind: 'said-by', ref: '1', other: '2' }, says: /writes 2 has said this point/ },
])('$finding.kind in words', ({ finding, says }) => { expect(findingWords(finding)).toMatch(says) }) // prettier-ignore
