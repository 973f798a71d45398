/** Text, tables and packages as drafts; and drafts as syllabi. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { casePackage, readSyllabus, tableRows } from '../../../../src/lib/syllabus'
import {
  caseTree,
  finishDraft,
  kindOfText,
  readTable,
  syllabusTree,
  tableTree,
  textBlocks,
  treeOf,
} from '../../../../src/lib/syllabus/import'
import { syllabi } from '../arbitrary'
import Papa from 'papaparse'
import { outline, treeIn } from './files'

const fromText = (source: string) => treeIn(treeOf(textBlocks(source), 'Mine'))
const fromTable = (source: string) => {
  const read = readTable(source)
  if (!read.ok) throw new Error(read.fault)
  return treeIn(tableTree(read.table, read.table.uses, 'Mine'))
}

describe('text', () => {
  test.each([
    {
      why: 'numbers say what is above what; wrapped lines are one',
      source: '3.1 Drift\n3.1.1 Waves reach the beach\nat an angle.\n3.1.2 Swash carries sand.',
      gives: [
        'topic 3.1 Drift',
        'point 3.1.1 Waves reach the beach at an angle.',
        'point 3.1.2 Swash carries sand.',
      ],
    },
    {
      why: 'what leads items in stands in front of each, unless it says nothing',
      source:
        '# Cliffs\nStudents should be able to say that:\n- a notch is cut\n- the cliff falls\n\n1. Features of a headland:\n   (a) a stack\n   (b) an arch',
      gives: [
        'topic Cliffs',
        'point 1.1 a notch is cut',
        'point 1.2 the cliff falls',
        'point 1.1(a) Features of a headland: a stack',
        'point 1.1(b) Features of a headland: an arch',
      ],
    },
    {
      why: 'a table of Markdown',
      source: '| Ref | Point |\n|---|---|\n| 1.1 | Limpets **graze**. |\n| 1.2 | A \\| B |',
      gives: ['point 1.1 Limpets graze.', 'point 1.2 A | B'],
    },
    {
      why: 'copied out of a document: parted words are whole, a real hyphen stays, page numbers are left out',
      source:
        '1.1 Waves reach the beach ob-\nliquely.\nPage 3 of 40\n1.2 A short-\nterm gauge, and one for a short-term study, floats at low-\nPage 4 of 40\nwater. The water is low.',
      gives: [
        'point 1.1 Waves reach the beach obliquely.',
        'point 1.2 A short-term gauge, and one for a short-term study, floats at low-water. The water is low.',
      ],
    },
    {
      why: 'for whom points are is said within a topic; whole tiers are topics',
      source: '# Foundation tier\n1. Waves come.\n\nHigher tier only\n\n2. Sand goes.',
      gives: ['topic Foundation tier', 'point 1.1 Waves come.', 'point 1.2 Sand goes.'],
    },
    {
      why: 'a quantity is no number',
      source: '2.5 cm of rain fell.',
      gives: ['point 1.1 2.5 cm of rain fell.'],
    },
    {
      why: 'script is text',
      source: '- <script>alert(1)</script>',
      gives: ['point 1.1 <script>alert(1)</script>'],
    },
    {
      why: '(i) after (h) is a letter',
      source: '1. All of:\n(h) one\n(i) two',
      gives: ['point 1(h) All of: one', 'point 1(i) All of: two'],
    },
  ])('$why', ({ source, gives }) => {
    expect(outline(fromText(source))).toEqual(gives)
  })

  test.each([
    ['notes.yaml', 'anything', 'syllabus'],
    ['', 'format: 1\ntitle: Pools\ntopics: []', 'syllabus'],
    ['', '{ "CFDocument": {} }', 'case'],
    ['', '1.1\tWaves\n1.2\tTides', 'table'],
    ['x.csv', 'a,b', 'table'],
    ['', 'Waves, tides, and sand.', 'text'],
  ])('%s %j is a %s', (name, source, kind) => {
    expect(kindOfText(name, source)).toBe(kind)
  })
})

describe('a table', () => {
  test('with names above its columns, semicolons between, ideas in a cell', () => {
    const tree = fromTable(
      'Topic;Ref;Text;Ideas\nDrift;1.1;Waves come.;"waves / swash; angle"\nDrift;1.2;Sand goes.;\n',
    )
    expect(outline(tree)).toEqual(['topic Drift', 'point 1.1 Waves come.', 'point 1.2 Sand goes.'])
    expect(tree.lines[1]?.more?.ideas.map(({ written }) => written)).toEqual([
      'waves / swash',
      'angle',
    ])
  })
  test('an idea that cannot be read is told with its row, and the point stays', () => {
    const tree = fromTable('ref,text,ideas\n1.1,Waves.,"("\n')
    expect(tree.warnings[0]).toMatchObject({ place: { kind: 'row', number: 2 } })
    expect(outline(tree)).toEqual(['point 1.1 Waves.'])
  })
  test('without names is told apart by what stands in it', () => {
    expect(outline(fromTable('1.1,Waves reach the beach.\n1.2,Sand moves.\n'))).toEqual([
      'point 1.1 Waves reach the beach.',
      'point 1.2 Sand moves.',
    ])
  })
  test.each([
    [
      'of 10 MB',
      'ref,text\n' + '1,aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\n'.repeat(250_000),
      /more than 5000 rows/,
    ],
    ['with a quotation mark left open', 'ref,text\n1,"open\n', /Row 2 has a quotation mark/],
    ['with nothing in it', '\n\n', /empty/],
  ])('%s is refused with the place', (_what, source, fault) => {
    expect(readTable(source)).toMatchObject({
      ok: false,
      fault: expect.stringMatching(fault) as string,
    })
  })
})

// Field names and associations as in 1EdTech CASE Service 1.1, information model, CFPackage.
const item = (identifier: string, fullStatement: string, humanCodingScheme?: string) => ({
  identifier,
  uri: `urn:x:${identifier}`,
  fullStatement,
  humanCodingScheme,
  lastChangeDateTime: '2026-01-01T00:00:00Z',
})
const child = (from: string, to: string, sequenceNumber?: number) => ({
  identifier: `${from}-${to}`,
  associationType: 'isChildOf',
  sequenceNumber,
  originNodeURI: { title: from, identifier: from, uri: 'urn:x' },
  destinationNodeURI: { title: to, identifier: to, uri: 'urn:x' },
})
const pack = (items: object[], associations: object[]) =>
  JSON.stringify({
    CFDocument: {
      identifier: 'doc',
      uri: 'urn:x',
      title: 'Shores',
      creator: 'us',
      lastChangeDateTime: '2026-01-01T00:00:00Z',
    },
    CFItems: items,
    CFAssociations: associations,
  })

describe('a CASE package', () => {
  test('children stand in the order of their sequence numbers', () => {
    const tree = treeIn(
      caseTree(
        pack(
          [item('t', 'Tides', '1'), item('b', 'Neap', '1.2'), item('a', 'Spring', '1.1')],
          [child('t', 'doc', 1), child('b', 't', 2), child('a', 't', 1)],
        ),
      ),
    )
    expect(outline(tree)).toEqual(['topic 1 Tides', 'point 1.1 Spring', 'point 1.2 Neap'])
  })
  test('a circle, an orphan and two parents are told and lose nothing', () => {
    const tree = treeIn(
      caseTree(
        pack(
          [
            item('t', 'Tides'),
            item('u', 'Waves'),
            item('a', 'A'),
            item('b', 'B'),
            item('c', 'C'),
            item('d', 'D'),
          ],
          [
            child('t', 'doc'),
            child('u', 'doc'),
            child('a', 't'),
            child('a', 'u'),
            child('b', 'c'),
            child('c', 'b'),
          ],
        ),
      ),
    )
    expect(tree.lines.map(({ text }) => text).sort()).toEqual([
      'A',
      'B',
      'C',
      'D',
      'Not placed',
      'Shores',
      'Tides',
      'Waves',
    ])
    expect(tree.warnings.map(({ message }) => message).join()).toMatch(
      /more than one parent.*circle/,
    )
  })
  test.each([
    ['{"CFDocument":{', /complete JSON/],
    [
      '{"CFDocument":{"identifier":"d","title":"x"},"CFItems":[{"identifier":"a"}]}',
      /CFItems\.0\.fullStatement/,
    ],
    ['[]', /not a package/],
    [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, /not a package/],
  ])('%.40s is refused with the place', (source, fault) => {
    expect(caseTree(source)).toMatchObject({
      ok: false,
      fault: expect.stringMatching(fault) as string,
    })
  })
})

describe('round trips of any syllabus', () => {
  const topicsOf = (tree: ReturnType<typeof treeIn>) => {
    const done = finishDraft(tree)
    if (!done.ok) throw new Error(JSON.stringify(done.problems))
    const read = readSyllabus(done.source)
    if (!read.ok) throw new Error(JSON.stringify(read.mistakes))
    return read.syllabus
  }
  test('through a draft nothing changes but what cannot be printed', () => {
    fc.assert(
      fc.property(syllabi, (one) => {
        const tree = syllabusTree(one)
        const back = topicsOf(tree)
        expect(back.topics.map(({ points }) => points)).toEqual(
          one.topics.map(({ points }) => points),
        )
      }),
      { numRuns: 50 },
    )
  })
  test('through a table and a package: refs, texts and all that a point has', () => {
    const plain = syllabi.map((one) => ({
      ...one,
      topics: one.topics.map((topic, t) => ({
        ...topic,
        title: `Topic ${t}`,
        id: `topic-${t}`,
        points: topic.points.map((point, p) => ({
          ...point,
          ref: `${t}.${p}`,
          text: `Point ${p} of ${t}`,
        })),
      })),
    }))
    fc.assert(
      fc.property(plain, (one) => {
        for (const tree of [
          fromTable(Papa.unparse(tableRows(one))),
          treeIn(caseTree(JSON.stringify(casePackage(one, 0)))),
        ])
          expect(
            tree.lines
              .filter(({ role }) => role === 'point')
              .map(({ ref, text, more }) => [
                ref,
                text,
                (more?.ideas ?? []).length,
                more?.value?.written,
                more?.any,
              ]),
          ).toEqual(
            one.topics.flatMap(({ points }) =>
              points.map(({ ref, text, ideas, value, any }) => [
                ref,
                text,
                ideas.length,
                value?.written,
                any,
              ]),
            ),
          )
      }),
      { numRuns: 50 },
    )
  })
})
