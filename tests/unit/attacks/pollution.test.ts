/**
 * Files that name the prototype of every object, at each place of each kind of file: whatever is made of the file, no object gets a
 * property that it was not given.
 */
import { afterEach, beforeAll, describe, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { casePackage, readSyllabus } from '../../../src/lib/syllabus'
import {
  caseTree,
  finishDraft,
  readTable,
  tableTree,
  textBlocks,
  treeOf,
} from '../../../src/lib/syllabus/import'
import { POLLUTING, pollution, prototypes } from '../../attacks/payloads'
import { check, draft, empty, page, paper, someSettings, syllabus } from '../store/records'

const before = prototypes()

function expectClean(): void {
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  expect(([] as unknown as Record<string, unknown>)['polluted']).toBeUndefined()
  expect(prototypes()).toEqual(before)
}

/** Nothing in a value that came out of a reader has been given another prototype. */
function expectPlain(value: unknown, where = ''): void {
  if (typeof value !== 'object' || value === null) return
  expect([Object.prototype, Array.prototype, null], where).toContain(Object.getPrototypeOf(value))
  for (const [name, inner] of Object.entries(value)) expectPlain(inner, `${where}.${name}`)
}

/** The JSON of a value with one more name in each of its objects, one text for each. */
function* spoilt(json: string, name: string): Generator<string> {
  for (const { index } of json.matchAll(/\{/g)) {
    const rest = json.slice(index + 1)
    yield `${json.slice(0, index + 1)}${JSON.stringify(name)}:${pollution(name)}${rest.startsWith('}') ? '' : ','}${rest}`
  }
}

let backup = ''
let recall = ''

beforeAll(async () => {
  await empty()
  await store.addCheck(check('a'), page('a'))
  await store.saveDraft(draft('drift'))
  await store.putSyllabus(syllabus('shores'))
  await store.putPaper(paper('p'))
  await store.saveSettings(someSettings)
  const sender = await store.nameSender('Ada', () => 'pupil-1')
  recall = JSON.stringify((await store.exportRecall(sender, ['a'], true, 5000)).file)
  backup = JSON.stringify(await store.exportAll(5000))
})
afterEach(empty)

const returned = JSON.stringify({
  app: 'Second Ink',
  returnFile: 1,
  pupilId: 'pupil-1',
  tutor: { id: 't', name: 'Mr Tern' },
  madeAtMs: 1,
  checks: [],
})

const JSON_READERS: Readonly<Record<string, () => [string, (text: string) => unknown]>> = {
  'a backup': () => [backup, (text) => store.importAll(text)],
  'a recall file': () => [recall, (text) => store.openRecallFile(text)],
  'a file from a tutor': () => [returned, (text) => store.openReturnFile(text)],
  'a package of CASE': () => [
    JSON.stringify(casePackage(syllabus('shores').syllabus, 0)),
    (text) => {
      const read = caseTree(text)
      if (read.ok) expectPlain(read)
      return read.ok ? finishDraft(read.tree) : read
    },
  ],
}

describe.each(POLLUTING)('the name %s', (name) => {
  test.each(Object.keys(JSON_READERS))('in %s', async (kind) => {
    const [text, open] = JSON_READERS[kind]!()
    const files = [...spoilt(text, name)]
    expect(files.length).toBeGreaterThan(1)
    for (const file of files) {
      await Promise.resolve(open(file)).then(expectPlain, (error: unknown) =>
        expect(error).toBeInstanceOf(store.StoreError),
      )
      expectClean()
    }
    for (const record of await Promise.all([store.listChecks(), store.listSyllabi()]))
      expectPlain(record)
  })

  test.each([
    ['as a field', `format: 1\ntitle: S\n${name}: { polluted: true }\ntopics: []`],
    ['as a merged field', `format: 1\ntitle: S\n<<: { ${name}: { polluted: true } }\ntopics: []`],
    [
      'as a symbol of an equation',
      `format: 1\ntitle: S\ntopics: [{ title: T, points: [{ ref: 1, text: 'Speed.', equation: 'v = f', where: { ${name}: speed, v: speed, f: frequency } }] }]`,
    ],
    [
      'as a ref and an id',
      `format: 1\ntitle: S\nid: ${name}\ntopics: [{ title: T, id: ${name}, points: [{ ref: ${name}, text: 'Waves come in.' }] }]`,
    ],
  ])('in a syllabus file, %s', (_where, file) => {
    expectPlain(readSyllabus(file))
    expectClean()
  })

  test('in a table, as a column, a symbol, a number and a topic; in text, as a heading', () => {
    const read = readTable(
      `topic,ref,text,equation,where,${name}\n${name},${name},Speed.,v = f,"${name}: speed\nv: speed\nf: frequency",x\n`,
    )
    if (!read.ok) throw new Error(read.fault)
    const tree = tableTree(read.table, read.table.uses, name)
    if (!tree.ok) throw new Error(tree.fault)
    expectPlain(tree.tree)
    expectPlain(finishDraft(tree.tree))
    expectPlain(treeOf(textBlocks(`# ${name}\n${name}. Waves come in.\n- ${name}`), name))
    expectClean()
  })
})
