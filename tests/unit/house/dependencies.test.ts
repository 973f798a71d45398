/** docs/dependencies.md lists what ships: each library once, with its size, its place and its reason. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

/** Compiled into the pages by the tools that build them. */
const COMPILED_IN = ['svelte', '@sveltejs/kit']

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  dependencies: Record<string, string>
}
const rows = readFileSync('docs/dependencies.md', 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('|'))
  .slice(2)
  .map((line) => line.split('|').map((cell) => cell.trim()))

test('every library that ships is listed, and no other', () => {
  expect(rows.map(([, library]) => library).sort()).toEqual(
    [...Object.keys(dependencies), ...COMPILED_IN].sort(),
  )
})

test.each(rows)('%s%s has a size, a place and a reason', (_start, _library, kB, loaded, why) => {
  expect(Number(kB)).toBeGreaterThan(0)
  expect(loaded).not.toBe('')
  expect(why).toMatch(/\.$/)
})

test('versions are fixed, so that what was looked at is what ships', () => {
  for (const version of Object.values(dependencies)) expect(version).toMatch(/^\d+\.\d+\.\d+$/)
})
