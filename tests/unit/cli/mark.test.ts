import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { CliError } from '../../../src/cli/files'
import { markCommand } from '../../../src/cli/mark-command'

/** As it is run in a terminal: slow, so that most tests ask the command itself. */
const run = (...args: string[]) =>
  spawnSync(
    process.execPath,
    [join('node_modules', 'tsx', 'dist', 'cli.mjs'), 'src/cli/mark.ts', ...args],
    { encoding: 'utf8' },
  )

async function printed(...args: string[]): Promise<string> {
  const written: string[] = []
  await markCommand(args, (text) => written.push(text))
  return written.join('')
}

/** What the command says when it refuses; it has printed nothing by then. */
async function refusal(...args: string[]): Promise<string> {
  const write = vi.fn()
  const error: unknown = await markCommand(args, write).catch((fault: unknown) => fault)
  expect(error).toBeInstanceOf(CliError)
  expect(write).not.toHaveBeenCalled()
  return (error as CliError).message
}

const SYLLABUS = `format: 1
title: Two points
topics:
  - title: Drift
    points:
      - ref: '1'
        text: Backwash runs straight down the beach under gravity.
        ideas: ['"backwash"', straight down, gravity]
      - ref: '2'
        text: A tombolo joins an island to the mainland.
        ideas: [tombolo, joins + island]
`
const PAGE = 'the backwash runs straight down because of gravity. I like tea.'

let folder = ''
const file = (name: string, content: string | Uint8Array) => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
let syllabus = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'second-ink-'))
  syllabus = file('two.yaml', SYLLABUS)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('marks in a terminal', () => {
  test('one JSON object a dump, one a line, with spans that cut the words', () => {
    const [one, two] = [file('one.txt', PAGE), file('two.txt', '')]
    const { status, stdout } = run(syllabus, 'drift', one, two, '--json')
    expect(status).toBe(0)
    const lines = stdout.trim().split('\n')
    expect(lines).toHaveLength(2)
    const [first, second] = lines.map((line) => JSON.parse(line))
    expect(Object.keys(first).sort()).toEqual(['beyond', 'dump', 'marker', 'points', 'topic'])
    expect(first).toMatchObject({ dump: one, topic: 'drift' })
    expect(first.points.map((p: { ref: string; outcome: string }) => [p.ref, p.outcome])).toEqual([
      ['1', 'full'],
      ['2', 'missed'],
    ])
    const said = first.points[0].ideas.map((i: { start: number; end: number }) =>
      PAGE.slice(i.start, i.end),
    )
    expect(said).toEqual(['backwash', 'straight down', 'gravity'])
    expect(first.points[1].ideas[0]).toEqual({
      idea: 'tombolo',
      found: false,
      start: null,
      end: null,
    })
    expect(
      first.beyond.map((s: { start: number; end: number }) => PAGE.slice(s.start, s.end)),
    ).toEqual(['I like tea.'])
    expect(second.points.map((p: { outcome: string }) => p.outcome)).toEqual(['missed', 'missed'])
  })

  test('plain text has each ref, its mark and the words', async () => {
    const stdout = await printed(syllabus, 'drift', file('one.txt', PAGE))
    expect(stdout).toContain('1 of 2 points full')
    expect(stdout).toMatch(/1 {2}full\b/)
    expect(stdout).toContain('“straight down”')
  })
})

describe('a folder', () => {
  const batch = (name: string, files: Record<string, string | Uint8Array>) => {
    const path = join(folder, name)
    mkdirSync(path)
    for (const [file, content] of Object.entries(files)) writeFileSync(join(path, file), content)
    return path
  }

  test('a table and a summary are written into it, lowest page and most missed point first', async () => {
    const path = batch('class', { 'mara.txt': PAGE, '=ben.txt': '', 'notes.md': PAGE })
    expect(await printed(syllabus, 'drift', path)).toMatch(/^2 pages marked: /)
    const table = readFileSync(join(path, 'marks.csv'), 'utf8')
    expect(table.split('\r\n')[1]).toMatch(/^"'=ben",1,/)
    expect(table.split('\r\n').filter((line) => line.startsWith('mara,'))).toHaveLength(2)
    const summary = readFileSync(join(path, 'marks-summary.md'), 'utf8')
    expect(summary).toMatch(/=ben: 0 of 2 points full\n- mara: 1 of 2 points full/)
    expect(summary).toMatch(/- 2, missed on 2 of 2 pages: A tombolo[^]*- 1, missed on 1 of 2 pages/)
    // The second time nothing of the first is taken for a page.
    expect(await printed(syllabus, 'drift', path)).toMatch(/^2 pages marked: /)
  })

  test('one bad file, and nothing is written', async () => {
    const path = batch('bad', { 'a.txt': PAGE, 'b.txt': new Uint8Array([0xff, 0xfe, 0x41]) })
    expect(await refusal(syllabus, 'drift', path)).toMatch(/b\.txt: not a UTF-8 text file/)
    expect(existsSync(join(path, 'marks.csv'))).toBe(false)
  })

  test('one without a page says so', async () => {
    expect(await refusal(syllabus, 'drift', batch('none', {}))).toMatch(
      /no \.txt file in this folder/,
    )
  })
})

describe('what is bad gets one clear line and exit 2', () => {
  const dump = () => file('page.txt', PAGE)
  test.each([
    { why: 'no arguments', args: () => [], says: /^usage: / },
    {
      why: 'no such syllabus',
      args: () => ['none.yaml', 'drift', dump()],
      says: /^none\.yaml: no such file$/,
    },
    {
      why: 'no such topic',
      args: () => [syllabus, 'tides', dump()],
      says: /no topic tides; it has drift$/,
    },
    {
      why: 'no such dump',
      args: () => [syllabus, 'drift', 'none.txt'],
      says: /^none\.txt: no such file$/,
    },
    {
      why: 'a folder for a dump',
      args: () => [syllabus, 'drift', dump(), folder],
      says: /a folder, not a file$/,
    },
    {
      why: 'not UTF-8',
      args: () => [syllabus, 'drift', file('bad.txt', new Uint8Array([0xff, 0xfe, 0x41]))],
      says: /not a UTF-8 text file/,
    },
    {
      why: 'a mistake in the syllabus, with its place',
      args: () => [file('bad.yaml', SYLLABUS.replace("ref: '2'", "ref: '1'")), 'drift', dump()],
      says: /bad\.yaml:\d+:\d+: .*(?:point|ref)/,
    },
    {
      why: 'an unknown option',
      args: () => [syllabus, 'drift', dump(), '--loud'],
      says: /^unknown option --loud/,
    },
  ])('$why', async ({ args, says }) => {
    const line = await refusal(...args())
    expect(line.split('\n')).toHaveLength(1)
    expect(line).toMatch(says)
  })

  test('in the terminal: the line on stderr, and nothing else', () => {
    const { status, stdout, stderr } = run('none.yaml', 'drift', dump())
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: '',
      stderr: 'none.yaml: no such file\n',
    })
  })
})
