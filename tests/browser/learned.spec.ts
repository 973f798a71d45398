/** A point learns a wording from a changed mark, and forgets it when it is removed. */
import {
  expect,
  expectNoSideways,
  expectNoViolations,
  markWord,
  test,
  topic,
  writeAndMark,
} from './app'

const SAID = 'The backwash slides back down the beach by its own weight.'

test('a wording counted once counts in the next check, until it is removed', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await writeAndMark(page, SAID)
  await expect(markWord(page, '2.3')).toContainText(/^\s*missed/i)
  await markWord(page, '2.3').click()
  await page
    .getByRole('group', { name: 'Your mark for point 2.3' })
    .getByRole('button', { name: 'full' })
    .click()
  await expect(page.getByText('From now on this wording counts for 2.3')).toBeVisible()
  await expectNoViolations(page)
  await expectNoSideways(page)

  await writeAndMark(page, SAID)
  await expect(markWord(page, '2.3')).toContainText(/^\s*full/i)

  await page.goto(topic.atHome)
  await page.getByText('1 wording, for the points').click()
  await expectNoViolations(page)
  await expectNoSideways(page)
  await page.getByRole('button', { name: /^Remove ?: The backwash/ }).click()
  await expect(page.getByRole('heading', { name: 'Wordings learnt' })).toHaveCount(0)

  await writeAndMark(page, SAID)
  await expect(markWord(page, '2.3')).toContainText(/^\s*missed/i)
})
