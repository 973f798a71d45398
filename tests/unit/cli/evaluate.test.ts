import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { evaluateCommand } from '../../../src/cli/evaluate-command'
import { CliError } from '../../../src/cli/files'

/** As it is run in a terminal: slow, so that most tests ask the command itself. */
const run = (...args: string[]) =>
  spawnSync(
    process.execPath,
    [join('node_modules', 'tsx', 'dist', 'cli.mjs'), 'src/cli/evaluate.ts', ...args],
    { encoding: 'utf8' },
  )

/** What the command says when it refuses; it has printed nothing by then. */
function refusal(...args: string[]): string {
  const write = vi.fn()
  try {
    evaluateCommand(args, write)
  } catch (error) {
    expect(error).toBeInstanceOf(CliError)
    expect(write).not.toHaveBeenCalled()
    return (error as CliError).message
  }
  throw new Error(`${args.join(' ')} was not refused.`)
}

const SYLLABUS = `format: 1
title: One point
topics:
  - title: Drift
    points:
      - ref: '1'
        text: Backwash runs straight down the beach under gravity.
        ideas: ['"backwash"', straight down, gravity]
`
const dumps = (topic: string, ref: string, mark: string) => ({
  topic,
  dumps: [{ id: 'a', style: 'prose', text: 'Backwash goes home.', labels: { [ref]: { mark } } }],
})

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'second-ink-'))
  writeFileSync(join(folder, 'one.yaml'), SYLLABUS)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const labelled = (content: unknown) =>
  writeFileSync(join(folder, 'one.dumps.json'), JSON.stringify(content))

describe('labelled dumps', () => {
  test('one JSON object with every measure, in all and by topic', () => {
    labelled(dumps('drift', '1', 'partial'))
    const { status, stdout } = run(folder, '--json')
    expect(status).toBe(0)
    const said = JSON.parse(stdout)
    const keys = [
      'points',
      'confusion',
      'fullPrecision',
      'fullRecall',
      'falseCredit',
      'contradictedRecall',
      'macroF1',
      'offered',
    ]
    expect(Object.keys(said)).toEqual([...keys, 'topics'])
    expect(Object.keys(said.topics[0]).sort()).toEqual([...keys, 'topic'].sort())
    expect(said.points).toBe(1)
  })

  test.each([
    { of: dumps('tides', '1', 'full'), says: /topic tides, but .* has drift/ },
    { of: dumps('drift', '7', 'full'), says: /dump a labels point 7/ },
    { of: dumps('drift', '1', 'half'), says: /at dumps\.0\.labels\.1\.mark/ },
    { of: { topic: 'drift' }, says: /dumps/ },
  ])('what does not fit is told in one line: $says', ({ of, says }) => {
    labelled(of)
    expect(refusal(folder)).toMatch(says)
    expect(refusal(folder).split('\n')).toHaveLength(1)
  })

  test('in the terminal the line is on stderr, and the exit code is 2', () => {
    labelled(dumps('tides', '1', 'full'))
    const { status, stdout, stderr } = run(folder)
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(stderr).toBe(`${refusal(folder)}\n`)
  })
})

describe('options that do not go together', () => {
  test.each([
    [['--short-answers', 'a.jsonl', '--drafted'], /leave --drafted out/],
    [['somewhere', '--show', 'all'], /--show is followed by the word wrong/],
    [['one', 'two'], /one folder at a time/],
    [['somewhere', '--learn', '3'], /--learn half/],
    [['--short-answers', 'a.jsonl', '--learn', 'half'], /not half/],
    [['somewhere', '--learn'], /followed by a whole number/],
    [['somewhere', '--fast'], /unknown option --fast/],
  ])('%j', (args, says) => expect(refusal(...args)).toMatch(says))
})
