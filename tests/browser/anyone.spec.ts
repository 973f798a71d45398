/**
 * Every page and state: free of accessibility violations in both themes, whole at 320 px and at 200 % zoom, and whole for who
 * uses the keyboard, forced colours or less motion. One walk, so that each state is reached once.
 */
import type { Page } from '@playwright/test'
import { expect, test, writeAndMark } from './app'
import { violations } from './axe'
import { faultsOfKeyboard } from './keyboard-walk'
import { afterMonths, EVERY_MARK, firstVisit, type State } from './states'

/** The tags of WCAG 2.2 AA: each version adds to the one before. */
const WCAG_22_AA = {
  tags: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
}
const WIDE = { width: 1280, height: 800 }
/** 200 % of text and all (success criterion 1.4.4) is half the room each way; 320 px is 1280 px at 400 % (1.4.10, reflow). */
const ZOOMED = { width: WIDE.width / 2, height: WIDE.height / 2 }
const NARROW = { width: 320, height: 640 }

/** What sticks out to the side, and what scrolls sideways without being a region that can be reached and has a name. */
const sideways = (page: Page) =>
  page.evaluate(async () => {
    // What is fitted to its room by script has done so two frames later.
    for (let frames = 0; frames < 2; frames += 1) await new Promise(requestAnimationFrame)
    const root = document.documentElement
    const over = root.scrollWidth - root.clientWidth
    const unnamed = [...document.querySelectorAll('main *')].filter((one) => {
      const scrolls = /auto|scroll/.test(getComputedStyle(one).overflowX)
      const reachable = one.matches(
        '[tabindex="0"][role="region"]:is([aria-label], [aria-labelledby])',
      )
      return (
        scrolls &&
        one.scrollWidth > one.clientWidth + 1 &&
        !reachable &&
        !one.matches('textarea, input')
      )
    })
    return [
      ...(over > 0 ? [`the page is ${over} px too wide`] : []),
      ...unnamed.map((one) => `${one.tagName} ${one.className} scrolls sideways, nameless`),
    ]
  })

const moving = (page: Page) =>
  page.evaluate(() =>
    document
      .getAnimations()
      .filter(({ playState }) => playState === 'running')
      .map((one) => one.constructor.name),
  )

async function faultsOf(page: Page): Promise<string[]> {
  const faults: string[] = []
  const add = (what: string, found: readonly string[]) =>
    faults.push(...found.map((one) => `${what}: ${one}`))
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' })
  add('light', await violations(page, WCAG_22_AA))
  add('motion', await moving(page))
  add('keyboard', await faultsOfKeyboard(page))
  await page.setViewportSize(ZOOMED)
  add('at 200 %', await sideways(page))
  await page.setViewportSize(NARROW)
  add('at 320 px', await sideways(page))
  await page.emulateMedia({ colorScheme: 'dark' })
  add('dark, at 320 px', await violations(page, WCAG_22_AA))
  await page.setViewportSize(WIDE)
  return faults
}

async function walk(page: Page, states: readonly State[]): Promise<void> {
  // A hundred looks by axe: on a busy machine they take minutes.
  test.setTimeout(600_000)
  await page.setViewportSize(WIDE)
  for (const { name, open } of states)
    await test.step(name, async () => {
      await open(page)
      expect.soft(await faultsOf(page), name).toEqual([])
    })
}

test('a first visit and one check', async ({ page }) => walk(page, firstVisit))

test('after three months, and a tutor', async ({ page }) => {
  await writeAndMark(page, EVERY_MARK)
  await walk(page, afterMonths)
})
