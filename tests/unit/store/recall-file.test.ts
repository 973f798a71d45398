/** The files that pupil and tutor exchange: what is published, what is refused, what stays. */
import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { beforeEach, describe, expect, test } from 'vitest'
import { FILES, schemaText } from '../../../src/cli/file-schemas'
import { makeReturnFile, newReview, withPoint, type RecallFile } from '../../../src/lib/review'
import * as store from '../../../src/lib/store'
import { tutorWords } from '../../../src/lib/view/remarks'
import { check, empty, page, rawGet, someSettings } from './records'

beforeEach(empty)

const newId = () => 'pupil-1'

/** A file as a pupil's app makes it. */
async function pupilsFile(
  madeAtMs = 5000,
  ids: readonly string[] = ['a', 'b'],
  withText = true,
): Promise<RecallFile> {
  for (const id of ids)
    if (!(await store.getCheck(id)))
      await store.addCheck(
        check(id, {
          marks: [
            { ref: '1.1', outcome: 'full' },
            { ref: '1.2', outcome: 'contradicted' },
          ],
        }),
        page(id),
      )
  const sender = await store.nameSender('Ada <script>alert(1)</script>', newId)
  const { file } = await store.exportRecall(sender, ids, withText, madeAtMs)
  return JSON.parse(JSON.stringify(file)) as RecallFile
}
const text = (file: unknown) => JSON.stringify(file)

const point = (ref: string, outcome: 'full' | 'partial' | 'missed' | null, comment = '') => ({
  ref,
  outcome,
  comment,
  atMs: 7000,
})

describe('the published schemas', () => {
  test.each(FILES)('$path is what the app reads with', (file) => {
    expect(JSON.parse(readFileSync(file.path, 'utf8'))).toEqual(JSON.parse(schemaText(file)))
  })

  test('a real recall file fits, with and without its text; a spoilt one does not', async () => {
    const validate = new Ajv().compile(JSON.parse(readFileSync(FILES[0]!.path, 'utf8')) as object)
    const file = await pupilsFile()
    expect(validate(file), text(validate.errors)).toBe(true)
    expect(validate(await pupilsFile(5000, ['a'], false))).toBe(true)
    expect(validate({ ...file, checks: [{ ...file.checks[0], topic: 'first' }] })).toBe(false)
    expect(validate({ ...file, pupil: {} })).toBe(false)
  })

  test('a real file from a tutor fits', () => {
    const validate = new Ajv().compile(JSON.parse(readFileSync(FILES[1]!.path, 'utf8')) as object)
    const review = withPoint(newReview('p', 'a'), point('1.1', 'missed', 'Say why.'))
    const tutor = { schema: 1, id: 't', name: 'Mr Rook' } as const
    expect(validate(JSON.parse(text(makeReturnFile('p', tutor, [review], 9))))).toBe(true)
  })
})

describe('what the pupil shares', () => {
  test('without the text, no word of the page is in the file', async () => {
    const file = await pupilsFile(5000, ['a'], false)
    expect(text(file)).not.toContain(page('a').text)
    expect(text(file)).not.toContain(page('a').report.points[0]!.why)
    expect(file.topics[0]!.points[0]!.text).toBe(page('a').topic.points[0]!.text)
  })

  test('the id is made once; the name may change', async () => {
    const one = await store.nameSender('Ada', () => 'first')
    expect(await store.nameSender('Ada L', () => 'second')).toEqual({ ...one, name: 'Ada L' })
  })
})

describe('opened by the tutor', () => {
  test('it is kept apart from the tutor’s own checks', async () => {
    const file = await pupilsFile()
    await empty()
    await store.addCheck(check('mine'), page('mine'))
    await store.openRecallFile(text(file), 6000)
    expect((await store.listChecks()).checks.map(({ id }) => id)).toEqual(['mine'])
    const { pupils } = await store.listPupils()
    expect(pupils).toMatchObject([{ name: file.pupil.name, checks: 2 }])
    expect((await store.getPupilPages('pupil-1', ['a'])).get('a')?.text).toBe(page('a').text)
  })

  test('a newer file takes the place of the older; notes and marks stay', async () => {
    const older = await pupilsFile(5000, ['a', 'b'])
    const newer = await pupilsFile(6000, ['b', 'c'])
    await empty()
    await store.openRecallFile(text(older))
    await store.changeReview('pupil-1', 'b', (review) => withPoint(review, point('1.1', 'missed')))
    await store.saveTutorNotes({ schema: 1, pupilId: 'pupil-1', text: 'Slow down', savedAtMs: 1 })
    expect(await store.openRecallFile(text(newer))).toMatchObject({ replaced: true, gone: 1 })
    const whole = await store.getPupil('pupil-1')
    expect(whole?.kept.checks.map((one) => one.check.id)).toEqual(['b', 'c'])
    expect(whole?.notes.text).toBe('Slow down')
    expect(whole?.reviews.get('b')?.points).toEqual([point('1.1', 'missed')])
    // Both points of the latest session count: the tutor took 1.1 away.
    expect(whole?.pupil.topics[0]?.gaps.map(({ ref }) => ref)).toEqual(['1.1', '1.2'])
    await expect(store.openRecallFile(text(older))).rejects.toThrow(/newer file .* is here already/)
  })

  test('ids that look like paths stay in their place', async () => {
    const file = await pupilsFile()
    await empty()
    const evil = { ...file, pupil: { id: '../check/x/1', name: 'x' } }
    await store.openRecallFile(text(evil))
    await store.openRecallFile(text({ ...file, pupil: { id: '..', name: 'y' } }))
    await store.removePupil('..')
    expect((await store.listPupils()).pupils.map(({ name }) => name)).toEqual(['x'])
    expect((await store.getPupilPages('../check/x/1', ['a'])).size).toBe(1)
    expect((await store.listChecks()).checks).toEqual([])
  })

  test('a backup brings pupils, notes and marks back', async () => {
    const file = await pupilsFile()
    await store.openRecallFile(text(file))
    await store.changeReview('pupil-1', 'a', (review) => withPoint(review, point('1.1', 'missed')))
    const before = await store.getPupil('pupil-1')
    const backup = text(await store.exportAll(5))
    await empty()
    await store.importAll(backup)
    expect(await store.getPupil('pupil-1')).toEqual(before)
    expect(await store.getSender()).toMatchObject({ id: 'pupil-1' })
  })
})

describe('back to the pupil', () => {
  const tutor = { schema: 1, id: 't', name: 'Mr Rook' } as const
  const returned = (madeAtMs: number, ...points: ReturnType<typeof point>[]) =>
    text(
      makeReturnFile(
        'pupil-1',
        tutor,
        [{ ...newReview('pupil-1', 'a'), comment: 'Good order.', points }],
        madeAtMs,
      ),
    )

  test('the tutor’s marks stand beside the others and decide, unless the setting says no', async () => {
    await pupilsFile()
    const done = await store.openReturnFile(returned(8000, point('1.1', 'missed', 'Which waves?')))
    expect(done).toMatchObject({ tutor: 'Mr Rook', checks: 1, unknown: 0, older: 0 })
    expect((await store.getCheck('a'))?.changes).toEqual([
      { ref: '1.1', outcome: 'missed', by: 'tutor', atMs: 7000 },
    ])
    expect(await store.getRemarks('a')).toMatchObject({
      tutor: 'Mr Rook',
      comment: 'Good order.',
      points: [{ ref: '1.1', comment: 'Which waves?' }],
    })
    const ownOf = async () =>
      (await store.listChecks()).checks.find(({ id }) => id === 'a')?.changes
    expect(await ownOf()).toHaveLength(1)
    await store.saveSettings({ ...someSettings, tutorMarksCount: false })
    expect(await ownOf()).toEqual([])
  })

  test('twice is once; a mark that was taken back is taken back; an older file changes nothing', async () => {
    await pupilsFile()
    await store.openReturnFile(returned(8000, point('1.1', 'missed')))
    await store.openReturnFile(returned(8000, point('1.1', 'missed')))
    expect((await store.getCheck('a'))?.changes).toHaveLength(1)
    await store.openReturnFile(returned(9000))
    expect((await store.getCheck('a'))?.changes.at(-1)).toMatchObject({
      outcome: null,
      by: 'tutor',
    })
    expect(await store.openReturnFile(returned(8500, point('1.1', 'full')))).toMatchObject({
      older: 1,
    })
    expect((await store.getCheck('a'))?.changes).toHaveLength(2)
  })

  test('what the pupil took off stays off in the next file, but for what is new in it, and comes back with the same file', async () => {
    await pupilsFile()
    const both = [point('1.1', 'missed', 'Say which way.'), point('1.2', 'full')]
    await store.openReturnFile(returned(8000, ...both))
    await store.removeRemarks('a', 8100)
    const marks = async () => {
      const given = new Map((await store.getCheck('a'))?.changes.map((one) => [one.ref, one]))
      return [...given.values()].map(({ ref, outcome }) => [ref, outcome])
    }
    expect(await marks()).toEqual([
      ['1.1', null],
      ['1.2', null],
    ])
    const next = returned(9000, both[0]!, point('1.2', 'partial', 'Nearly.'))
    expect(await store.openReturnFile(next)).toMatchObject({ checks: 1, leftOff: 3 })
    expect(await marks()).toEqual([
      ['1.1', null],
      ['1.2', 'partial'],
    ])
    expect(await store.getRemarks('a')).toMatchObject({
      comment: '',
      points: [{ ref: '1.2', comment: 'Nearly.' }],
    })
    // It is remembered beyond one file.
    const third = returned(9500, both[0]!, point('1.2', 'partial', 'Nearly.'))
    expect(await store.openReturnFile(third)).toMatchObject({ leftOff: 3 })
    // The same file again is asked for.
    expect(await store.openReturnFile(third)).toMatchObject({ leftOff: 0 })
    expect(await marks()).toEqual([
      ['1.1', 'missed'],
      ['1.2', 'partial'],
    ])
    expect((await store.getRemarks('a'))?.points).toHaveLength(2)
    // Where a tutor's marks are all that was there, nothing is left to be shown.
    const check = await store.removeRemarks('a', 9600)
    expect(tutorWords(check, await store.getRemarks('a'), {})).toBeUndefined()
  })

  test('a file for somebody else, or of no check here, is refused', async () => {
    await expect(store.openReturnFile(returned(8000))).rejects.toThrow(/None of the checks/)
    await store.nameSender('Bo', () => 'somebody else')
    await expect(store.openReturnFile(returned(8000))).rejects.toThrow(/for somebody else/)
    expect(await rawGet('remarks/a')).toBeUndefined()
  })
})

describe('what is refused, in a sentence that says what it is', () => {
  test.each([
    {
      why: 'a newer version',
      file: { app: 'Second Ink', recallFile: 2 },
      says: /newer Second Ink/,
    },
    { why: 'a backup', file: { app: 'Second Ink', backup: 1 }, says: /This is a backup/ },
    {
      why: 'a tutor’s file',
      file: { app: 'Second Ink', returnFile: 1 },
      says: /file from a tutor, not/,
    },
    { why: 'another program’s', file: { items: [] }, says: /no recall file of Second Ink/ },
    { why: 'a list', file: [1, 2], says: /no recall file of Second Ink/ },
  ])('$why', async ({ file, says }) => {
    await expect(store.openRecallFile(text(file))).rejects.toThrow(says)
    await expect(store.openRecallFile(text(file))).rejects.toThrow(
      /Nothing on this device was changed/,
    )
    expect((await store.listPupils()).pupils).toEqual([])
  })

  test.each([
    {
      why: 'cut in half',
      spoil: (whole: string) => whole.slice(0, whole.length / 2),
      says: /cut short/,
    },
    {
      why: 'a mark by hand',
      spoil: (s: string) => s.replace('"contradicted"', '"perfect"'),
      says: /edited by hand: at “checks/,
    },
    {
      why: 'a topic that is not there',
      spoil: (s: string) => s.replace('"topic":0', '"topic":7'),
      says: /its topic is not in the file/,
    },
    {
      why: 'a check twice',
      spoil: (s: string) => s.replaceAll('"id":"b"', '"id":"a"'),
      says: /twice/,
    },
  ])('$why', async ({ spoil, says }) => {
    const file = text(await pupilsFile())
    await expect(store.openRecallFile(spoil(file))).rejects.toThrow(says)
    expect((await store.listPupils()).pupils).toEqual([])
  })
})
