/** Every page and state of the app, in an order in which one visitor can reach them: an empty app, one check, a demo, a pupil. */
import type { Page } from '@playwright/test'
import { expectMarked, topic, writingPage } from './app'

export interface State {
  readonly name: string
  readonly open: (page: Page) => Promise<void>
}

/** A page on the topic that has every mark on it. */
export const EVERY_MARK = [
  'Swash carries material up the beach at an angle.',
  'Waves come in at an angle because of the wind.',
  'Backwash runs down the beach at an angle.',
  'A spit grows where the coast bends, and sand is dropped there.',
  'Gulls stand on the groynes.',
].join('\n')

const DEMO = 'demo%3Ashoreline-science-level-2'
const main = (page: Page) => page.locator('main')
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()

/** A page that shows something once its records are read. */
const at = (path: string, shows: string | RegExp): State['open'] =>
  async function open(page) {
    await page.goto(path)
    await main(page).getByText(shows).first().waitFor()
  }
const then = (...steps: readonly State['open'][]): State['open'] =>
  async function all(page) {
    for (const step of steps) await step(page)
  }
const press =
  (name: string | RegExp): State['open'] =>
  (page) =>
    button(page, name).click()
const sees =
  (shows: string | RegExp): State['open'] =>
  (page) =>
    main(page).getByText(shows).first().waitFor()

/** What a first visitor meets, and one check. */
export const firstVisit: readonly State[] = [
  { name: 'first day', open: at('/', 'What do you remember?') },
  { name: 'blank page', open: at(topic.check, topic.title) },
  {
    name: 'a question on the blank page',
    open: async (page) => {
      await writingPage(page).press('Control+Enter')
      await page.getByRole('dialog').waitFor()
    },
  },
  {
    name: 'page being written',
    open: async (page) => {
      await page.keyboard.press('Escape')
      await writingPage(page).fill(EVERY_MARK)
      await page.getByText('Kept', { exact: true }).waitFor()
    },
  },
  { name: 'a page begun, on Today', open: at('/', 'A page you have begun') },
  {
    name: 'marked page',
    open: async (page) => {
      await page.goto(topic.check)
      await button(page, 'Stop and mark').click()
      await expectMarked(page)
    },
  },
  { name: 'a mark being changed', open: press(/change the mark of point 2\.6$/) },
  {
    name: 'a mark changed',
    open: (page) =>
      page
        .getByRole('group', { name: 'Your mark for point 2.6' })
        .getByRole('button', { name: 'full' })
        .click(),
  },
  { name: 'plan of one topic', open: at('/plan', /No exam date/) },
  { name: 'drills, none open', open: at('/drill', 'No drill is open') },
  { name: 'sheet, to choose', open: at('/sheet', 'Of which') },
  { name: 'papers, empty', open: at('/papers', 'Log a question') },
  { name: 'pupils, none', open: at('/group', 'For a tutor') },
  { name: 'no such check', open: at('/marked?check=none', /not on this device|no such/i) },
  { name: 'no such topic', open: at('/topic?syllabus=none&topic=none', /./) },
  { name: 'no such syllabus', open: at('/syllabus?syllabus=none', /./) },
  { name: 'no such sheet', open: at('/sheet?syllabus=none&topic=none', /./) },
  { name: 'no such drill', open: at('/drill?syllabus=none&topic=none', 'Back to Today') },
  { name: 'no such check to write', open: at('/check?syllabus=none&topic=none', /./) },
  { name: 'no such pupil', open: at('/pupil?pupil=none', 'no such pupil') },
  { name: 'no such check of a pupil', open: at('/moderate?pupil=none', 'no such check') },
  { name: 'nothing to edit', open: at('/edit?syllabus=none', /./) },
  { name: 'no such page', open: at('/no-such-page', /./) },
  { name: 'help', open: at('/help', 'The method') },
  { name: 'bring', open: at('/bring', 'paste its text') },
  {
    name: 'bring, a file that cannot be read',
    open: async (page) => {
      await page.waitForLoadState('networkidle')
      await page.getByLabel('Open a syllabus file').setInputFiles({
        name: 'harbour.png',
        mimeType: 'image/png',
        buffer: Buffer.from('\u0089PNG', 'latin1'),
      })
      await page.getByRole('alert').first().waitFor()
    },
  },
  {
    name: 'bring, a syllabus file with mistakes',
    open: async (page) => {
      await page.getByText('Or paste its text').click()
      await page
        .getByLabel('The text of a syllabus file')
        .fill(
          'format: 1\nid: harbours\ntitle: Harbours\ntopics:\n  - title: Walls\n    pionts: []\n',
        )
      await button(page, 'Read it').click()
      await main(page).getByText('was not taken').waitFor()
    },
  },
  {
    name: 'bring, a draft',
    open: async (page) => {
      await page.goto('/bring')
      await page.waitForLoadState('networkidle')
      await page.getByText('Or paste its text').click()
      await page
        .getByLabel('The text of a syllabus file')
        .fill(
          '# Rock pools\n1.1 A pool high on the shore warms in the sun and grows saltier as its water dries up.\n1.1 Limpets graze.\n1.2 Weed gives off oxygen by day.\n# Harbour walls\n2.1 A wall of loose stone lets water through and takes the force out of the waves.',
        )
      await button(page, 'Read it').click()
      await page.getByRole('list', { name: 'Lines of the draft' }).waitFor()
    },
  },
  {
    name: 'bring, a line of the draft open',
    open: (page) =>
      page
        .getByRole('list', { name: 'Lines of the draft' })
        .getByRole('button', { name: 'Limpets graze' })
        .click(),
  },
]

/** Three months of an invented pupil; then a pupil's file in the hands of a tutor. */
export const afterMonths: readonly State[] = [
  {
    name: 'your data, and what goes to a tutor',
    open: async (page) => {
      await page.goto('/data')
      await page.getByText('Choose what goes into the file').click()
      await page.getByLabel('Your name, as your tutor knows you').fill('Nell Rook')
    },
  },
  {
    name: 'pupils',
    open: async (page) => {
      const saving = page.waitForEvent('download')
      await button(page, 'Save a file for my tutor').click()
      const file = await (await saving).path()
      await page.goto('/group')
      await page.getByLabel('Open pupils’ files').setInputFiles(file)
      await page.getByRole('table').first().waitFor()
    },
  },
  {
    name: 'pupil',
    open: async (page) => {
      await page.getByRole('link', { name: 'Nell Rook' }).first().click()
      await page.getByRole('heading', { level: 1, name: 'Nell Rook' }).waitFor()
    },
  },
  {
    name: 'a check to mark',
    open: async (page) => {
      await page
        .getByRole('link', { name: /^Mark it yourself/ })
        .first()
        .click()
      await page.getByText('are hidden').waitFor()
    },
  },
  {
    name: 'a check marked by a tutor',
    open: async (page) => {
      await page
        .getByRole('group', { name: 'Point 2.1', exact: true })
        .getByRole('button', { name: 'full' })
        .click()
      await button(page, 'Show the other marks').click()
      await page.getByRole('heading', { name: 'Where you differ' }).waitFor()
    },
  },
  {
    name: 'your data, with a demo',
    open: async (page) => {
      await page.goto('/data')
      await button(page, 'Load the demo').click()
      await page.locator('aside[aria-label="Demo"]').waitFor()
    },
  },
  { name: 'today', open: at('/', 'Due as well') },
  { name: 'plan', open: at('/plan', /Before the exam|fits|exam/) },
  { name: 'syllabi', open: at('/syllabi', /demo/) },
  { name: 'syllabus', open: at(`/syllabus?syllabus=${DEMO}`, 'The whole at a glance') },
  {
    name: 'topic',
    open: at(`/topic?syllabus=${DEMO}&topic=longshore-drift`, /\bReopened\b/),
  },
  {
    name: 'topic, its points open',
    open: then(press('Show the points'), sees('The syllabus says')),
  },
  {
    name: 'a marked page of the demo',
    open: async (page) => {
      await page.goto(`/topic?syllabus=${DEMO}&topic=longshore-drift`)
      await page
        .locator('section')
        .filter({ has: page.getByRole('heading', { name: 'Checks' }) })
        .getByRole('link')
        .first()
        .click()
      await expectMarked(page)
    },
  },
  {
    name: 'drill',
    open: async (page) => {
      await page.goto(`/drill?syllabus=${DEMO}&topic=measuring-the-shore`)
      await page.getByRole('textbox').waitFor()
    },
  },
  { name: 'drill, marked', open: then(press('See the point'), sees('You wrote')) },
  { name: 'drill, over', open: then(press('End it here'), sees('written in full')) },
  {
    name: 'tonight',
    open: async (page) => {
      await page.goto('/tonight')
      await button(page, 'Begin').waitFor()
    },
  },
  {
    name: 'tonight, running',
    open: async (page) => {
      await button(page, 'Begin').click()
      await page.getByRole('textbox').waitFor()
    },
  },
  { name: 'tonight, paused', open: then(press('Pause'), sees('Paused.')) },
  {
    name: 'tonight, over',
    open: then(
      press('Go on'),
      press('See the point'),
      press('End it here'),
      sees('written in full'),
    ),
  },
  { name: 'sheet', open: at(`/sheet?syllabus=${DEMO}&topic=measuring-the-shore`, 'Print') },
  {
    name: 'cards',
    open: at(`/sheet?syllabus=${DEMO}&topic=measuring-the-shore&as=cards`, 'Print'),
  },
  { name: 'papers', open: at('/papers', 'Marks lost by topic') },
  {
    name: 'papers, a question refused',
    open: async (page) => {
      await button(page, 'Log a question or a paper').click()
      await button(page, 'Log it').click()
      await page.getByRole('alert').first().waitFor()
    },
  },
  {
    name: 'settings, an exam being added',
    open: async (page) => {
      await page.goto('/settings')
      await button(page, 'Add an exam').click()
      await page.getByLabel('Day of the exam').waitFor()
    },
  },
  {
    name: 'editor, a point open',
    open: async (page) => {
      await page.goto('/edit?syllabus=shoreline-science-level-2')
      await page
        .getByRole('button', { name: /^1\.1\b/ })
        .first()
        .click()
      await page.getByLabel('Try a sentence').fill('Waves are made by wind.')
    },
  },
]
