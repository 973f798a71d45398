/** The plan to the exam: on a month, on a phone, with nothing to plan, with far too much, and as a file for a calendar. */
import { readFileSync } from 'node:fs'
import ICAL from 'ical.js'
import type { Page } from '@playwright/test'
import { expect, expectSound, test } from './app'
import { putRecords } from './records'

const TODAY = '2027-03-10T15:00:00Z'

/** A syllabus of many topics, with settings. */
async function bring(page: Page, topics: number, settings: object): Promise<void> {
  const syllabus = {
    format: 1,
    id: 'harbours',
    title: 'Harbours',
    topics: Array.from({ length: topics }, (_, i) => ({
      id: `harbour-${i + 1}`,
      title: `Harbour ${i + 1}`,
      points: Array.from({ length: 10 }, (_point, j) => ({
        ref: `${i + 1}.${j + 1}`,
        text: `Wall ${j + 1} of harbour ${i + 1} stands in the water.`,
        ideas: [],
      })),
    })),
  }
  const kept = { schema: 1, id: 'harbours', source: '', syllabus, addedAtMs: 1 }
  const whole = {
    schema: 1,
    sessionsNeeded: 3,
    daysApart: 7,
    secondsPerPoint: 90,
    exams: [],
    ratings: [],
    ...settings,
  }
  await page.goto('/help')
  await putRecords(page, [
    ['syllabus/harbours', kept],
    ['settings', whole],
  ])
}

test.beforeEach(({ page }) => page.clock.setFixedTime(TODAY))

test('nothing taken up yet: what to do', async ({ page }) => {
  await page.goto('/plan')
  await expect(page.getByText('There is nothing to plan yet.', { exact: false })).toBeVisible()
  await expect(page.getByRole('link', { name: 'bring your own' })).toBeVisible()
  await expectSound(page)
})

test('no exam: six weeks, and a way to set one', async ({ page }) => {
  await bring(page, 3, {})
  await page.goto('/plan')
  await expect(page.getByText('No exam date is set', { exact: false })).toBeVisible()
  await expect(page.getByRole('link', { name: 'Set an exam date' })).toBeVisible()
  await expect(page.getByRole('table', { name: 'March 2027' })).toBeVisible()
})

test('an exam that is over is said to be over', async ({ page }) => {
  await bring(page, 2, { exams: [{ syllabusId: 'harbours', day: '2027-03-09', title: 'Paper 1' }] })
  await page.goto('/plan')
  await expect(page.getByText('Paper 1 was on 9 March', { exact: false })).toBeVisible()
})

test('sixty topics, too much for the days left: how much is missing, and every page of it sound', async ({
  page,
}) => {
  await bring(page, 60, { exams: [{ syllabusId: 'harbours', day: '2027-04-14' }] })
  await page.goto('/plan')
  const short = page.getByRole('region', { name: 'What does not fit' })
  await expect(short).toContainText(/Before the exam on 14 April .* of checks have no room/)
  await expect(short).toContainText(/it all fits|which topics to leave out/)

  const table = page.getByRole('table', { name: 'March 2027' })
  await expect(table.getByRole('columnheader')).toHaveCount(7)
  await expect(table.locator('[aria-current=date]')).toContainText('10')
  await expectSound(page)
  await page.getByRole('button', { name: 'Later month' }).press('Enter')
  const april = page.getByRole('table', { name: 'April 2027' })
  await expect(april.getByRole('cell').filter({ hasText: 'Exam: Harbours' })).toContainText('14')
  await expect(page.getByRole('button', { name: 'Later month' })).toBeDisabled()

  await page.setViewportSize({ width: 390, height: 844 })
  await expect(april).toBeHidden()
  const days = page.getByRole('region', { name: 'April 2027' })
  await expect(days.getByText(/^Thursday,? 1 April 2027$/)).toBeVisible()
  await expectSound(page)
})

test('the calendar file: the next checks or the whole plan, read by another parser', async ({
  page,
}) => {
  await bring(page, 3, { exams: [{ syllabusId: 'harbours', day: '2027-04-14', title: 'Paper 1' }] })
  await page.goto('/plan')
  const save = async () => {
    const saving = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save a calendar file' }).click()
    const file = await saving
    expect(file.suggestedFilename()).toBe('second-ink-plan.ics')
    const calendar = new ICAL.Component(
      ICAL.parse(readFileSync(await file.path(), 'utf8')) as unknown[],
    )
    return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event))
  }
  const next = await save()
  expect(next.map(({ summary }) => summary).sort()).toEqual([
    'Check: Harbour 1',
    'Check: Harbour 2',
    'Check: Harbour 3',
    'Exam: Paper 1',
  ])
  await page.getByRole('radio', { name: /The whole plan/ }).check()
  const all = await save()
  expect(all.length).toBeGreaterThan(next.length)
  const uids = all.map(({ uid }) => uid)
  for (const { uid } of next) expect(uids).toContain(uid)
  expect(all.every(({ startDate }) => startDate.toString() <= '2027-04-14')).toBe(true)
})

test('where nothing can be kept, the page says so and stands', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }))
  await page.goto('/plan')
  await expect(page.getByRole('alert').first()).toBeVisible()
  await expect(page.getByRole('heading', { level: 1, name: 'Plan' })).toBeVisible()
})
