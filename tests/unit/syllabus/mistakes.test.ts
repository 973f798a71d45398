import { describe, expect, test } from 'vitest'
import { readSyllabus } from '../../../src/lib/syllabus'

interface Row {
  readonly name: string
  readonly file: string
  /** `line:column where: a part of the message` */
  readonly says: readonly string[]
}

function mistakesOf(file: string): string[] {
  const read = readSyllabus(file)
  return read.ok ? [] : read.mistakes.map((m) => `${m.line}:${m.column} ${m.where}: ${m.message}`)
}

function check({ file, says }: Row): void {
  const found = mistakesOf(file)
  expect(found).toHaveLength(says.length)
  says.forEach((part, i) => {
    const [place = '', message = ''] = part.split(/: (.*)/s)
    expect(found[i]!.startsWith(`${place}: `), `${found[i]} should be at ${place}`).toBe(true)
    expect(found[i]).toContain(message)
  })
}

const rows = (table: readonly Row[]) => test.each(table)('$name', check)

/** A file whose one point, in lines 6 and on, has these lines. */
const point = (...lines: string[]) =>
  [
    'format: 1',
    'title: Shore',
    'topics:',
    '  - title: Drift',
    '    points:',
    ...lines.map((line, i) => `      ${i === 0 ? '- ' : '  '}${line}`),
    '',
  ].join('\n')
const withPoint = (...lines: string[]) => point('ref: "1"', 'text: Backwash.', ...lines)
const HERE = 'topic "Drift", point 1'

describe('the file', () => {
  rows([
    { name: 'empty', file: '', says: ['1:1 the file: empty'] },
    {
      name: 'a byte-order mark, which editors do not count',
      file: '\uFEFFformat: 2\n',
      says: ['1:9 format: newer than this version'],
    },
    { name: 'blank', file: ' \n\n', says: ['1:1 the file: empty'] },
    {
      name: 'only a comment',
      file: '# soon\n',
      says: ['1:1 the file: Fields (name: value) were expected, not nothing'],
    },
    { name: 'no text at all', file: '%PDF\0\x01', says: ['1:1 the file: not a text file'] },
    {
      name: 'too long',
      file: `title: ${'x'.repeat(3e6)}`,
      says: ['1:1 the file: 3.0 million characters'],
    },
    {
      name: 'a list',
      file: '- a\n',
      says: ['1:1 the file: Fields (name: value) were expected, not a list'],
    },
    {
      name: 'a text',
      file: 'Longshore drift\n',
      says: ['1:1 the file: Fields (name: value) were expected, not a text'],
    },
    {
      name: 'two documents',
      file: 'format: 1\n---\nformat: 1\n',
      says: ['2:1 the file: one file holds one syllabus'],
    },
    { name: 'ten thousand brackets', file: '['.repeat(10_000), says: ['1:41 the file: too deep'] },
    { name: 'ten thousand dashes', file: '- '.repeat(10_000), says: ['1:80 the file: too deep'] },
  ])
})

describe('YAML', () => {
  rows([
    {
      name: 'a tab as indentation',
      file: 'topics:\n\t- a\n',
      says: ['2:1 the file: indent with spaces'],
    },
    {
      name: 'a second colon',
      file: 'title: Waves: the sea\n',
      says: ['1:8 the file: put a text that holds ": " between quotation marks'],
    },
    {
      name: 'a quoted word and more',
      file: 'ideas:\n  - "backwash" / swash\n',
      says: ['2:16 the file: put the whole idea between single quotes'],
    },
    {
      name: 'a quoted word and more in a list on one line',
      file: 'ideas: ["backwash" / swash]\n',
      says: ['1:20 the file: put the whole idea between single quotes'],
    },
    {
      name: 'an open quotation mark',
      file: 'title: "Shore\nnote: x\n',
      says: ['1:8 the file: never closed'],
    },
    {
      name: 'no space after a colon',
      file: 'format:1\ntitle: Shore\n',
      says: ['1:1 the file: a space after the colon'],
    },
    {
      name: 'no colon',
      file: 'format: 1\ntitle Shore\n',
      says: ['2:1 the file: not "title Shore"'],
    },
    { name: 'an open bracket', file: 'a: [b, c\nd: e\n', says: ['2:1 the file: not closed'] },
    {
      name: 'a reserved letter',
      file: 'a: @x\nb: `y\n',
      says: ['1:4 the file: cannot begin with "@"', '2:4 the file: cannot begin with "`"'],
    },
    {
      name: 'an exclamation mark',
      file: 'title: !Shore x\n',
      says: ['1:8 the file: exclamation mark (!Shore)'],
    },
  ])
})

describe('the syllabus', () => {
  const topic = 'topics:\n  - title: A\n    points: [{ ref: "1", text: x }]\n'
  rows([
    {
      name: 'no format',
      file: `title: S\n${topic}`,
      says: ['1:1 the file: The field "format" is missing'],
    },
    {
      name: 'format in quotes',
      file: `format: "1"\ntitle: S\n${topic}`,
      says: ['1:9 format: without quotation marks'],
    },
    {
      name: 'an older format',
      file: `format: 0\ntitle: S\n${topic}`,
      says: ['1:9 format: format: 1 was expected'],
    },
    {
      name: 'a newer format, and nothing else',
      file: `format: 2\nheading: S\n`,
      says: ['1:9 format: newer than this version'],
    },
    {
      name: 'no title',
      file: `format: 1\n${topic}`,
      says: ['1:1 the file: The field "title" is missing'],
    },
    {
      name: 'an empty title',
      file: `format: 1\ntitle:\n${topic}`,
      says: ['2:7 title: Nothing stands here'],
    },
    {
      name: 'a title of signs',
      file: `format: 1\ntitle: "???"\n${topic}`,
      says: ['2:8 title: neither letter nor figure'],
    },
    {
      name: 'a title on two lines',
      file: `format: 1\ntitle: "a\\nb"\n${topic}`,
      says: ['2:8 title: One line was expected'],
    },
    {
      name: 'a long title',
      file: `format: 1\ntitle: ${'x'.repeat(201)}\n${topic}`,
      says: ['2:8 title: at most 200'],
    },
    {
      name: 'null as a title',
      file: `format: 1\ntitle: null\n${topic}`,
      says: ['2:8 title: YAML reads null as nothing'],
    },
    {
      name: 'a misspelt field',
      file: `format: 1\ntitel: S\n${topic}`,
      says: [
        '1:1 the file: The field "title" is missing',
        '2:1 the file: Unknown field "titel". Did you mean "title"?',
      ],
    },
    {
      name: 'a field of another format',
      file: `format: 1\ntitle: S\nlevel: 2\n${topic}`,
      says: ['3:1 the file: Known fields here: format, title, topics, id, note'],
    },
    {
      name: 'a field twice',
      file: `format: 1\ntitle: S\ntitle: T\n${topic}`,
      says: ['3:1 the file: a second time; the first is in line 2'],
    },
    {
      name: '__proto__',
      file: `format: 1\ntitle: S\n__proto__: { a: b }\n${topic}`,
      says: ['3:1 the file: cannot be a name'],
    },
    {
      name: 'a list as a name',
      file: `format: 1\ntitle: S\n? [a]\n: b\n${topic}`,
      says: ['3:3 the file: The name of a field was expected'],
    },
    {
      name: 'no topics',
      file: 'format: 1\ntitle: S\n',
      says: ['1:1 the file: The field "topics" is missing'],
    },
    {
      name: 'an empty list of topics',
      file: 'format: 1\ntitle: S\ntopics: []\n',
      says: ['3:9 topics: The list is empty'],
    },
    {
      name: 'topics that are no list',
      file: 'format: 1\ntitle: S\ntopics: drift\n',
      says: [
        '3:9 topics: A list (each item on a line of its own after "- ") was expected, not a text',
      ],
    },
    {
      name: 'a topic that is a text',
      file: 'format: 1\ntitle: S\ntopics: [drift]\n',
      says: ['3:10 topic no. 1: Fields (name: value) were expected'],
    },
    {
      name: 'a topic that is a number',
      file: 'format: 1\ntitle: S\ntopics: [7]\n',
      says: ['3:10 topic no. 1: not the number 7'],
    },
    {
      name: 'an alias',
      file: `format: 1\ntitle: &a S\nnote: *a\n${topic}`,
      says: ['3:7 note: the short form *name of YAML'],
    },
    {
      name: 'an alias bomb',
      file: `format: 1\ntitle: S\nnote: &a [x, x]\ntopics: &b [${'*a,'.repeat(3)}*b]\n`,
      says: [
        '3:10 note: not a list',
        ...[13, 16, 19, 22].map(
          (column, i) => `4:${column} topic no. ${i + 1}: the short form *name`,
        ),
      ],
    },
  ])
})

describe('a topic', () => {
  const topics = (...lines: string[]) =>
    ['format: 1', 'title: S', 'topics:', ...lines, ''].join('\n')
  const points = '    points: [{ ref: "1", text: x }]'
  rows([
    {
      name: 'without a title',
      file: topics('  - points: [{ ref: "1", text: x }]'),
      says: ['4:5 topic no. 1: The field "title" is missing'],
    },
    {
      name: 'without points',
      file: topics('  - title: A'),
      says: ['4:5 topic "A": The field "points" is missing'],
    },
    {
      name: 'with an empty list of points',
      file: topics('  - title: A', '    points: []'),
      says: ['5:13 topic "A", points: The list is empty'],
    },
    {
      name: 'titles that make one id',
      file: topics(
        '  - title: Rock pools',
        points,
        '  - title: Rock Pools!',
        '    points: [{ ref: "2", text: x }]',
      ),
      says: ['6:12 topic "Rock Pools!", title: The id rock-pools is taken by the topic in line 4'],
    },
    {
      name: 'an id twice',
      file: topics(
        '  - id: a',
        '    title: A',
        points,
        '  - id: a',
        '    title: B',
        '    points: [{ ref: "2", text: x }]',
      ),
      says: ['7:9 topic "B", id: The id a is taken by the topic in line 4'],
    },
    {
      name: 'an id that is none',
      file: topics('  - id: Rock Pools', '    title: A', points),
      says: ['4:9 topic "A", id: Write rock-pools'],
    },
    {
      name: 'a misspelt caution',
      file: topics('  - title: A', '    cuation: x', points),
      says: ['5:5 topic "A": Did you mean "caution"?'],
    },
  ])
})

describe('a point', () => {
  rows([
    {
      name: 'without a ref',
      file: point('text: x'),
      says: ['6:9 topic "Drift", point no. 1: The field "ref" is missing'],
    },
    {
      name: 'without a text',
      file: point('ref: "1"'),
      says: [`6:9 ${HERE}: The field "text" is missing`],
    },
    {
      name: 'a blank cue',
      file: withPoint('cue: " "'),
      says: [`8:14 ${HERE}, cue: Nothing stands here`],
    },
    {
      name: 'a cue that is a list',
      file: withPoint('cue: [what, why]'),
      says: [`8:14 ${HERE}, cue: A text was expected, not a list`],
    },
    {
      name: 'a cue on two lines',
      file: withPoint('cue: "What?\\nWhy?"'),
      says: [`8:14 ${HERE}, cue: One line was expected`],
    },
    {
      name: 'a long cue',
      file: withPoint(`cue: ${'why '.repeat(51)}`),
      says: [`8:14 ${HERE}, cue: at most 200`],
    },
    {
      name: 'a cue that is the text, whatever its case and signs',
      file: withPoint('cue: BACKWASH?'),
      says: [`8:14 ${HERE}, cue: gives the point away`],
    },
    {
      name: 'two cues',
      file: withPoint('cue: What?', 'cue: Why?'),
      says: [`9:9 ${HERE}: "cue" stands here a second time; the first is in line 8`],
    },
    {
      name: 'a misspelt cue',
      file: withPoint('ceu: What?'),
      says: [`8:9 ${HERE}: Did you mean "cue"?`],
    },
    {
      name: 'a blank text',
      file: point('ref: "1"', 'text: "  "'),
      says: [`7:15 ${HERE}, text: Nothing stands here`],
    },
    {
      name: 'a number as ref',
      file: point('ref: 2.10', 'text: x'),
      says: ['6:14 topic "Drift", point 2.10, ref: ref: "2.10": without them'],
    },
    {
      name: 'a ref twice',
      file: `${withPoint()}      - ref: "1"\n        text: y\n`,
      says: [`8:14 ${HERE}, ref: taken, in line 6`],
    },
    {
      name: 'a text that YAML splits',
      file: withPoint('reject: [a: b]'),
      says: [`8:18 ${HERE}, reject[1]: between quotation marks`],
    },
    {
      name: 'ideas that are no list',
      file: withPoint('ideas: gravity'),
      says: [`8:16 ${HERE}, ideas: A list`],
    },
    {
      name: 'an empty idea',
      file: withPoint('ideas: [a, ""]'),
      says: [`8:20 ${HERE}, ideas[2]: Nothing stands here`],
    },
    {
      name: 'any without ideas',
      file: withPoint('any: 2'),
      says: [`8:9 ${HERE}, any: there are no "ideas"`],
    },
    {
      name: 'any of too few',
      file: withPoint('any: 3', 'ideas: [a, b]'),
      says: [`8:14 ${HERE}, any: asks for 3 ideas, but there are only 2`],
    },
    {
      name: 'any in quotes',
      file: withPoint('any: "2"', 'ideas: [a, b]'),
      says: [`8:14 ${HERE}, any: A whole number from 1`],
    },
    {
      name: 'any of none',
      file: withPoint('any: 0', 'ideas: [a, b]'),
      says: [`8:14 ${HERE}, any: A whole number from 1`],
    },
    {
      name: 'half an idea',
      file: withPoint('any: 1.5', 'ideas: [a, b]'),
      says: [`8:14 ${HERE}, any: A whole number from 1`],
    },
    {
      name: 'steps beside ideas',
      file: withPoint('ideas: [a, b]', 'any: 1', 'steps: [c, d]'),
      says: [`8:9 ${HERE}, ideas: "steps" and "ideas"`, `9:9 ${HERE}, any: "steps" and "any"`],
    },
    {
      name: 'steps beside a value',
      file: withPoint('value: 5 m', 'steps: [c, d]'),
      says: [`8:9 ${HERE}, value: "steps" and "value"`],
    },
    {
      name: 'an unreadable value',
      file: withPoint('value: 5 to 7 m'),
      says: [`8:18 ${HERE}, value: A range`],
    },
    {
      name: 'a misspelt field',
      file: withPoint('idea: [a]'),
      says: [`8:9 ${HERE}: Did you mean "ideas"?`],
    },
  ])
})

describe('an equation', () => {
  rows([
    {
      name: 'without where',
      file: withPoint('equation: v = f'),
      says: [`8:19 ${HERE}, equation: The field "where" is missing`],
    },
    {
      name: 'where without equation',
      file: withPoint('where: { v: a }'),
      says: [`8:9 ${HERE}, where: there is no "equation"`],
    },
    {
      name: 'chemical with where',
      file: withPoint('equation: A → B', 'where: { A: a }'),
      says: [`9:16 ${HERE}, where: takes no "where"`],
    },
    {
      name: 'no =',
      file: withPoint('equation: f × λ', 'where: { f: a }'),
      says: [`8:24 ${HERE}, equation: One = (or a reaction arrow`],
    },
    {
      name: 'a symbol too few and one too many',
      file: withPoint('equation: v = f × λ', 'where: { v: a, f: b, w: c }'),
      says: [
        `8:27 ${HERE}, equation: "λ" is not in "where"`,
        `9:30 ${HERE}, where: "w" does not occur`,
      ],
    },
    {
      name: 'words that cannot be read',
      file: withPoint('equation: v = f', 'where: { v: a / , f: b }'),
      says: [`9:24 ${HERE}, where, v: a word was expected`],
    },
    {
      name: 'where that is a list',
      file: withPoint('equation: v = f', 'where: [v, f]'),
      says: [`9:16 ${HERE}, where: Fields (name: value) were expected`],
    },
  ])
})

describe('the place of a mistake inside an idea', () => {
  rows([
    {
      name: 'plain',
      file: withPoint('ideas:', '  - gravity', '  - straight / / down'),
      says: [`10:24 ${HERE}, ideas[2]: a word was expected`],
    },
    {
      name: 'single quotes, doubled inside',
      file: withPoint("ideas: ['the wind''s (pull']"),
      says: [`8:30 ${HERE}, ideas[1]: bracket is never closed`],
    },
    {
      name: 'double quotes with escapes',
      file: withPoint('ideas: ["a \\"b\\u0063\\" (d"]'),
      says: [`8:32 ${HERE}, ideas[1]: bracket is never closed`],
    },
    {
      name: 'space before it',
      file: withPoint("ideas: ['  a (b']"),
      says: [`8:22 ${HERE}, ideas[1]: bracket is never closed`],
    },
    {
      name: 'folded over lines',
      file: withPoint('ideas:', '  - at an angle /', '    oblique (ly'),
      says: [`10:21 ${HERE}, ideas[1]: bracket is never closed`],
    },
    {
      name: 'a block',
      file: withPoint('ideas:', '  - >', '    at an angle /', '    oblique (ly'),
      says: [`11:21 ${HERE}, ideas[1]: bracket is never closed`],
    },
    { name: 'a reject is no notation', file: withPoint('reject: [the (beach / + ]'), says: [] },
    {
      name: 'a step',
      file: withPoint('steps: [mark, (the)]'),
      says: [`8:24 ${HERE}, steps[2]: nothing is needed`],
    },
  ])
})

describe('many mistakes', () => {
  test('all are listed in the order of the file', () => {
    const file = point('ref: 1', 'text: x', 'value: about 5', 'ideas: [(a), b]').replace(
      'title: Shore',
      'titel: Shore',
    )
    expect(mistakesOf(file).map((mistake) => mistake.split(' ')[0])).toEqual([
      '1:1',
      '2:1',
      '6:14',
      '8:16',
      '9:18',
    ])
  })

  test('50 at most, and how many more there are', () => {
    const read = readSyllabus(withPoint('ideas:', ...Array.from({ length: 60 }, () => '  - (a)')))
    expect(read).toMatchObject({ ok: false, more: 10 })
    expect(!read.ok && read.mistakes).toHaveLength(50)
  })

  test('a large file of mistakes is answered', () => {
    expect(readSyllabus('x: 1\n'.repeat(100_000))).toMatchObject({
      ok: false,
      // 99,999 repeats, one unknown field, three missing ones
      more: 99_999 + 1 + 3 - 50,
    })
  })
})
