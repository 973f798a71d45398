/** A pupil and a tutor in two browser profiles: the file goes there, marks and comments come back. */
import type { Page } from '@playwright/test'
import { asUpload, NAMES, pupilFile, sixPupils } from './pupil-files'
import { expect, expectSound, markWord, pointNote, shipped, test, topic, writeAndMark } from './app'

const last = topic.points.at(-1)!

/** Says point 2.3 in words that the marker does not take by itself. */
const SAID = 'The backwash slides back down the beach by its own weight.'
/** What the tutor gives to the page. */
const SAID_REFS = [topic.points[0]!.ref, '2.3']

const learntHere = (page: Page) =>
  page
    .getByRole('listitem')
    .filter({ hasText: SAID })
    .filter({ hasText: /Accepted/ })

/** The points that a page with that one sentence misses, marked with others by the tutor. */
async function missedOfBatch(page: Page): Promise<string[]> {
  await page.goto('/group')
  await page.getByRole('combobox', { name: /^Topic/ }).selectOption({ label: topic.title })
  await page
    .getByLabel('Open text files')
    .setInputFiles({ name: 'one.txt', mimeType: 'text/plain', buffer: Buffer.from(SAID) })
  await expect(page.getByText('1 page marked.')).toBeVisible()
  return page
    .getByRole('table', { name: /by the pages that miss them/ })
    .getByRole('rowheader')
    .allInnerTexts()
}

test('pupil, tutor, pupil', async ({ page: pupil, browser }, testInfo) => {
  await writeAndMark(pupil, `${topic.points[0]!.text}\n${SAID}`)
  await expect(markWord(pupil, '2.3')).toContainText(/^\s*missed/i)
  await pupil.goto('/data')
  await pupil.getByText('Choose what goes into the file').click()
  const list = pupil.getByRole('list', { name: 'Chosen checks' })
  await expect(list.getByRole('listitem')).toHaveCount(1)
  // The words that the tutor will read, without the topic and the time.
  const facts = (await list.innerText()).replace(/\s+/g, ' ').match(/\d+ words? in .*$/)![0]
  await pupil.getByLabel('Your name, as your tutor knows you').fill('Nell <b>Rook</b>')
  await expectSound(pupil)
  const saving = pupil.waitForEvent('download')
  await pupil.getByRole('button', { name: 'Save a file for my tutor' }).click()
  const recall = testInfo.outputPath('recall.json')
  await (await saving).saveAs(recall)

  const elsewhere = await browser.newContext({ baseURL: testInfo.project.use.baseURL! })
  const tutor = await elsewhere.newPage()
  await tutor.goto('/group')
  const open = tutor.getByLabel('Open pupils’ files')
  await open.setInputFiles([
    { name: 'notes.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') },
    { name: 'half.json', mimeType: 'application/json', buffer: Buffer.from('{"app":"Sec') },
  ])
  await expect(tutor.getByRole('status').first()).toContainText(
    'half.json: This is not a recall file',
  )
  await expect(tutor.getByRole('table')).toHaveCount(0)
  await open.setInputFiles(recall)
  const group = tutor.getByRole('table', { name: /latest session of each topic/ })
  await expect(group.getByRole('columnheader', { name: topic.title })).toBeVisible()
  await expect(group.getByRole('cell')).toContainText(`of ${topic.points.length} points`)
  await expectSound(tutor)

  await group.getByRole('link', { name: 'Nell <b>Rook</b>' }).click()
  await expect(tutor.getByRole('heading', { level: 1 })).toHaveText('Nell <b>Rook</b>')
  await expect(tutor.getByText(facts).first()).toBeVisible()
  const byDay = tutor.getByRole('table', { name: /Each point on each day/ })
  for (const { ref } of topic.points)
    await expect(byDay.getByRole('rowheader', { name: ref, exact: true })).toBeVisible()
  await tutor.getByRole('button', { name: 'I have seen this' }).click()
  await expect(tutor.getByText('Nothing is new.')).toBeVisible()
  await tutor.getByLabel('Your notes, for yourself alone').fill('Ask about groynes')
  await expect(tutor.getByText('Kept', { exact: true })).toBeVisible()
  await expectSound(tutor)

  await tutor.getByRole('link', { name: /^Mark it yourself/ }).click()
  await expect(tutor.getByText('are hidden')).toBeVisible()
  await expect(tutor.getByText('Marker:')).toHaveCount(0)
  await expectSound(tutor)
  // By keyboard alone; the focus goes on by itself.
  await tutor
    .getByRole('group', { name: `Point ${topic.points[0]!.ref}`, exact: true })
    .getByRole('button', { name: 'full' })
    .focus()
  for (const { ref } of topic.points)
    await tutor.keyboard.press(SAID_REFS.includes(ref) ? 'f' : 'm')
  await tutor.keyboard.press('c')
  await tutor.keyboard.type('Say which way.')
  await tutor.keyboard.press('Tab')
  const all = topic.points.length
  await expect(
    tutor.getByRole('heading', { name: `Points: ${all} of ${all} marked` }),
  ).toBeVisible()
  await tutor.getByRole('button', { name: 'Show the other marks' }).click()
  await expect(tutor.getByText('You marked every point before you saw the others.')).toBeVisible()
  await expect(tutor.getByText(/of \d+ points the same, \d+ %/).first()).toBeVisible()
  await expect(tutor.getByText(/95 % interval/).first()).toBeVisible()
  await expect(tutor.getByText('From now on this wording counts for 2.3, here and')).toBeVisible()
  await expectSound(tutor)

  await tutor.getByRole('link', { name: /to save the file for them/ }).click()
  await tutor.getByLabel('Your name').fill('Mr Tern')
  const returning = tutor.waitForEvent('download')
  await tutor.getByRole('button', { name: 'Save the file for this pupil' }).click()
  const marks = testInfo.outputPath('marks.json')
  await (await returning).saveAs(marks)

  // The same file again changes nothing of the tutor's.
  await tutor.goto('/group')
  await tutor.getByLabel('Open pupils’ files').setInputFiles(recall)
  await expect(tutor.getByText(/your notes and marks stay/)).toBeVisible()
  await tutor.getByRole('link', { name: 'Nell <b>Rook</b>' }).click()
  await expect(tutor.getByLabel('Your notes, for yourself alone')).toHaveValue('Ask about groynes')
  await expect(tutor.getByText('points marked by you')).toBeVisible()
  await tutor.getByText(/wordings?, for the points/).click()
  await expect(learntHere(tutor)).toContainText('Accepted, by you, of a pupil')
  await expectSound(tutor)
  // The tutor's own marking knows the wording, until it is removed.
  expect(await missedOfBatch(tutor)).not.toContain('2.3')
  await tutor.goBack()
  await tutor.getByText(/wordings?, for the points/).click()
  await learntHere(tutor).getByRole('button', { name: 'Remove' }).click()
  await expect(learntHere(tutor)).toHaveCount(0)
  expect(await missedOfBatch(tutor)).toContain('2.3')
  await elsewhere.close()

  await pupil.getByLabel('Open a file from my tutor').setInputFiles(marks)
  await expect(pupil.getByText('1 check from Mr Tern')).toBeVisible()
  await expect(pupil.getByText(/your points learnt \d+ wording/)).toBeVisible()
  await pupil.getByRole('link', { name: topic.title }).first().click()
  await expect(pupil.getByText(`Mr Tern marked ${all} points.`)).toBeVisible()
  await expect(pointNote(pupil, last.ref)).toContainText('Tutor: missed')
  await expect(pointNote(pupil, last.ref)).toContainText('Say which way.')
  await expect(pupil.getByText(`${SAID_REFS.length} of ${all} points full`).first()).toBeVisible()
  await expect(pointNote(pupil, '2.3')).toContainText('From your tutor: from now on')
  await expectSound(pupil)

  await writeAndMark(pupil, SAID)
  await expect(markWord(pupil, '2.3')).toContainText(/^\s*full/i)
  await pupil.goto('/settings')
  await pupil.getByLabel('The status follows the tutor’s marks').uncheck()
  await writeAndMark(pupil, SAID)
  await expect(markWord(pupil, '2.3')).toContainText(/^\s*missed/i)
  await pupil.goto('/settings')
  await pupil.getByLabel('The status follows the tutor’s marks').check()
  await pupil.goto(topic.atHome)
  await pupil.getByText(/wordings?, for the points/).click()
  await expect(learntHere(pupil)).toContainText('Accepted, from your tutor')
  await expectSound(pupil)
  await learntHere(pupil).getByRole('button', { name: 'Remove' }).click()
  await expect(learntHere(pupil)).toHaveCount(0)
  await writeAndMark(pupil, SAID)
  await expect(markWord(pupil, '2.3')).toContainText(/^\s*missed/i)
})

test('many text files at once for one topic', async ({ page }) => {
  await page.goto('/group')
  await page.getByRole('combobox', { name: /^Topic/ }).selectOption({ label: topic.title })
  const text = (name: string, content: string) => ({
    name,
    mimeType: 'text/plain',
    buffer: Buffer.from(content),
  })
  await page
    .getByLabel('Open text files')
    .setInputFiles([
      text('mara.txt', topic.points.map((point) => point.text).join('\n')),
      text('ben.txt', ''),
      text('cut.txt', 'a\0b'),
    ])
  await expect(page.getByText('2 pages marked.')).toBeVisible()
  await expect(page.getByRole('alert')).toContainText('cut.txt is not a text file')
  const pages = page.getByRole('listitem').filter({ hasText: 'points full' })
  await expect(pages.first()).toContainText(`ben: 0 of ${topic.points.length} points full`)
  await expectSound(page)
})

test('the report on 500 checks is one printed page', async ({ page }) => {
  await page.goto('/group')
  const made = { id: 'many', name: NAMES[1]!, checks: 500, seed: 3 }
  await page.getByLabel('Open pupils’ files').setInputFiles(asUpload(made))
  await page.getByRole('link', { name: NAMES[1]! }).click()
  await expect(page.getByRole('heading', { level: 1, name: NAMES[1]! })).toBeVisible()
  for (const format of ['A4', 'Letter']) {
    const pdf = await page.pdf({ format })
    // Each page of a PDF has one object of this type; the tree above them is "/Pages".
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1)
  }
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByText(/^and \d+ more points$/)).toBeVisible()
})

test('six pupils dropped at once, with what is no recall file among them', async ({ page }) => {
  await page.goto('/group')
  const whole = asUpload(sixPupils[0]!).buffer.toString()
  const dropped = [
    ...sixPupils.map((made) => ({
      name: `${made.id}.json`,
      text: JSON.stringify(pupilFile(made)),
    })),
    { name: 'newer.json', text: whole.replace('"recallFile":1', '"recallFile":2') },
    { name: 'half.json', text: whole.slice(0, whole.length / 2) },
    { name: 'by-hand.json', text: whole.replace('"partial"', '"nearly"') },
    { name: 'other.json', text: '{"decks":[]}' },
    { name: 'picture.png', text: '\0\x01\x02' },
  ]
  const files = await page.evaluateHandle((given) => {
    const data = new DataTransfer()
    for (const { name, text } of given) data.items.add(new File([text], name))
    data.items.add(new File(['x'.repeat(50_000_000)], 'endless.json'))
    return data
  }, dropped)
  await page.getByText('or drop them here').dispatchEvent('drop', { dataTransfer: files })
  const told = page.getByRole('status').filter({ hasText: 'newer.json' })
  for (const says of [
    `${NAMES[0]}: 4 checks.`,
    `${NAMES[5]}: 19 checks.`,
    'newer.json: This recall file was made by a newer Second Ink',
    'half.json: This is not a recall file, or it was cut short on the way',
    'by-hand.json: This recall file is damaged, or it was edited by hand: at “checks.',
    'other.json: This is no recall file of Second Ink',
    'picture.png is not a text file',
    'endless.json is 50 MB; at most 40 MB',
  ])
    await expect(told).toContainText(says)
  await expectSound(page)

  const group = page.getByRole('table', { name: /who needs help first/ })
  await expect(group.getByRole('columnheader').first()).toHaveText('Pupil')
  for (const name of NAMES)
    await expect(group.getByRole('rowheader', { name: name.slice(0, 20) })).toHaveCount(1)
  // Each cell is read out in words, under its topic.
  const [head, ...cells] = await group
    .getByRole('row', { name: NAMES[5]! })
    .getByRole('cell')
    .or(group.getByRole('row', { name: NAMES[5]! }).getByRole('rowheader'))
    .allInnerTexts()
  expect(head).toContain(NAMES[5])
  expect(cells).toHaveLength(shipped.topics.length)
  for (const cell of cells) expect(cell).toMatch(/\d+ of \d+ points, .*(ago|yesterday|today)/)

  await page.getByRole('link', { name: NAMES[2]! }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(NAMES[2]!)
  const days = page.getByRole('table', { name: /each topic on each day/ })
  await expect(days.getByRole('rowheader')).toHaveCount(shipped.topics.length)
  await expect(days.getByRole('columnheader')).toHaveCount(11)
  const changed = page.getByRole('table', { name: /Marks that the pupil changed/ })
  await expect(changed.getByRole('row', { name: /in their own favour/ }).first()).toBeVisible()
  await expect(changed.getByRole('row', { name: /against themselves/ }).first()).toBeVisible()
  await expectSound(page)
})
