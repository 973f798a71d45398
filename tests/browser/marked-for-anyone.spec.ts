/** The marked page for who hears it, sees other colours, has the system's own colours, or has only a keyboard. */
import type { Page } from '@playwright/test'
import { PNG } from 'pngjs'
import { changeMark, expect, expectMarked, markWord, test, topic, writeAndMark } from './app'
import { EVERY_MARK } from './states'

const WORDS = {
  full: 'full',
  partial: 'part said',
  missed: 'missed',
  contradicted: 'says the opposite',
} as const
type Outcome = keyof typeof WORDS
const OUTCOMES = Object.keys(WORDS) as Outcome[]
/** In every colour there is, in fewer, and in none. */
const VISIONS = ['none', 'protanopia', 'deuteranopia', 'tritanopia', 'achromatopsia'] as const

/** What the marker gave, as it was kept. */
const keptMarks = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ ref: string; outcome: Outcome }[]>((done, fail) => {
        const id = new URLSearchParams(location.search).get('check') ?? ''
        const opened = indexedDB.open('second-ink')
        opened.onerror = () => fail(opened.error ?? new Error('no database'))
        opened.onsuccess = () => {
          const got = opened.result.transaction('records').objectStore('records').get(`check/${id}`)
          got.onsuccess = () => done((got.result as { marks: never[] }).marks)
        }
      }),
  )

interface Spoken {
  readonly role: string
  readonly name: string
  readonly says: string
}

/** The notes of the points in the order in which the accessibility tree has them, each with all that is said in it. */
async function spokenNotes(page: Page): Promise<Spoken[]> {
  const session = await page.context().newCDPSession(page)
  const { nodes } = await session.send('Accessibility.getFullAXTree')
  await session.detach()
  const byId = new Map(nodes.map((node) => [node.nodeId, node]))
  const value = (of?: { value?: unknown }) => String(of?.value ?? '')
  const textIn = (id: string): string => {
    const node = byId.get(id)
    if (!node) return ''
    if (!node.ignored && value(node.role) === 'StaticText') return value(node.name)
    return (node.childIds ?? []).map(textIn).join(' ')
  }
  const inOrder = (id: string): string[] => [
    id,
    ...(byId.get(id)?.childIds ?? []).flatMap((child) => inOrder(child)),
  ]
  const [root] = nodes
  return inOrder(root?.nodeId ?? '').flatMap((id) => {
    const node = byId.get(id)
    if (!node || node.ignored || value(node.role) !== 'note') return []
    const says = textIn(id).replace(/\s+/g, ' ')
    return [{ role: 'note', name: value(node.name), says }]
  })
}

test('read aloud, each point is told with its mark and its words, under its statement and beside the page; a change too', async ({
  page,
}) => {
  await writeAndMark(page, EVERY_MARK)
  const marks = await keptMarks(page)
  // The page has every mark on it: what is said of none of them could not fail.
  for (const outcome of OUTCOMES)
    expect(marks.filter((mark) => mark.outcome === outcome).length, outcome).toBeGreaterThan(0)
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 800 })
    await page.reload()
    await expectMarked(page)
    const notes = await spokenNotes(page)
    expect(notes.map(({ name }) => name).sort()).toEqual(
      topic.points.map(({ ref }) => `Point ${ref}`).sort(),
    )
    for (const { ref, text } of topic.points) {
      const { outcome } = marks.find((mark) => mark.ref === ref)!
      const { says } = notes.find(({ name }) => name === `Point ${ref}`)!
      expect(says, ref).toContain(text)
      expect(says.toLowerCase(), ref).toContain(WORDS[outcome])
      for (const other of OUTCOMES.filter((one) => one !== outcome))
        expect(says.toLowerCase(), ref).not.toMatch(
          new RegExp(`(^|[.:] )${WORDS[other]} ?: change the mark`),
        )
      if (outcome === 'partial') expect(says, ref).toContain('not said:')
      if (outcome === 'contradicted') expect(says, ref).toMatch(/You wrote “.+”/)
    }
  }
  // The score in words, before any point.
  await expect(page.getByText(/^\d+ of 12 points full; .*\d+ missed; .*opposite\.$/)).toBeVisible()

  const mark = await changeMark(page, '2.6')
  await expect(page.getByRole('article').getByRole('status')).toHaveText(
    new RegExp(`^Point 2\\.6: ${mark}, your mark\\. \\d+ of 12 points full`),
  )
  await expect(markWord(page, '2.6')).toBeFocused()
  await expect(
    page
      .getByRole('link', { name: 'Backwash runs down the beach at an angle.: point 2.3' })
      .or(page.getByRole('link', { name: 'Backwash runs down the beach at an angle: point 2.3' })),
  ).toBeAttached()
})

interface Ink {
  readonly width: number
  readonly height: number
  readonly on: readonly boolean[]
}

/** Which pixels of a mark are ink: those that differ from its paper by at least 3 to 1, as WCAG 1.4.11 has it. */
async function inkOf(page: Page, key: ReturnType<Page['locator']>): Promise<Ink> {
  const { width, height, data } = PNG.sync.read(await key.screenshot())
  const light = (at: number) =>
    [0.2126, 0.7152, 0.0722].reduce((sum, weight, i) => {
      const share = data[at * 4 + i]! / 255
      return sum + weight * (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4)
    }, 0)
  const paper = light(0)
  const on = Array.from({ length: width * height }, (_, at) => {
    const [dark, bright] = [light(at), paper].sort((a, b) => a - b) as [number, number]
    return (bright + 0.05) / (dark + 0.05) >= 3
  })
  return { width, height, on }
}

/** The share of the ink of both that only one of them has: 0 for the same shape, 1 for nothing in common. */
function apart(a: Ink, b: Ink): number {
  let [either, one] = [0, 0]
  for (let y = 0; y < Math.min(a.height, b.height); y += 1)
    for (let x = 0; x < Math.min(a.width, b.width); x += 1) {
      const [inA, inB] = [a.on[y * a.width + x], b.on[y * b.width + x]]
      if (inA || inB) either += 1
      if (inA !== inB) one += 1
    }
  return either === 0 ? 0 : one / either
}

test('the marks are shapes that stay apart with fewer colours; in the system’s own nothing is told by a background alone', async ({
  page,
}) => {
  await writeAndMark(page, EVERY_MARK)
  const session = await page.context().newCDPSession(page)
  const key = page.getByRole('list', { name: 'The marks' })
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    for (const type of VISIONS) {
      await session.send('Emulation.setEmulatedVisionDeficiency', { type })
      const shapes: { name: string; ink: Ink }[] = []
      for (const item of await key.getByRole('listitem').all())
        shapes.push({
          name: (await item.innerText()).trim(),
          ink: await inkOf(page, item.locator('svg')),
        })
      expect(shapes.map(({ name }) => name)).toEqual([
        ...OUTCOMES.map((outcome) => WORDS[outcome]),
        'not sure: you decide',
      ])
      for (const { name, ink } of shapes)
        expect(ink.on.filter(Boolean).length, `${type}: ink of ${name}`).toBeGreaterThan(15)
      shapes.forEach((a, i) =>
        shapes.slice(i + 1).forEach((b) => {
          expect(apart(a.ink, b.ink), `${type}: ${a.name} and ${b.name}`).toBeGreaterThan(0.6)
        }),
      )
    }
  }
  await session.send('Emulation.setEmulatedVisionDeficiency', { type: 'none' })

  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' })
  const css = (locator: ReturnType<Page['locator']>, property: string) =>
    locator.evaluate((one, name) => getComputedStyle(one).getPropertyValue(name), property)
  const paper = await css(page.locator('body'), 'background-color')
  const marks = page.locator('svg.mark')
  for (const mark of await marks.all()) expect(await css(mark, 'stroke')).not.toBe(paper)
  expect(await css(page.locator('a.said').first(), 'text-decoration-line')).toContain('underline')
  expect(await css(page.locator('a.struck').first(), 'text-decoration-line')).toContain(
    'line-through',
  )
  await markWord(page, '2.6').click()
  const group = page.getByRole('group', { name: 'Your mark for point 2.6' })
  const pressed = group.locator('[aria-pressed=true]')
  expect(await css(pressed, 'text-decoration-line')).toContain('underline')
  expect(await css(group.locator('[aria-pressed=false]').first(), 'text-decoration-line')).toBe(
    'none',
  )
  await page.keyboard.press('Tab')
  expect(await css(page.locator(':focus-visible'), 'outline-style')).toBe('solid')
  await page.keyboard.press('Escape')

  // The pile of a drill: what is left and what has left it.
  await page.getByRole('link', { name: 'Write only the gaps' }).click()
  await page.getByRole('textbox').waitFor()
  const [left] = await page.locator('.pile i.left').all()
  const fill = await css(left!, 'background-color')
  expect(fill).not.toBe(paper)
})

test('the first Tab leads to the page, and a new page is told', async ({ page }) => {
  await page.goto('/help')
  await page.getByRole('heading', { level: 1, name: 'Help' }).waitFor()
  await page.keyboard.press('Tab')
  const skip = page.getByRole('link', { name: 'To the page' })
  await expect(skip).toBeFocused()
  await expect(skip).toBeInViewport()
  await page.keyboard.press('Enter')
  await expect(page.locator('main')).toBeFocused()
  await page.keyboard.press('Tab')
  expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true)

  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('link', { name: 'Syllabi' })
    .click()
  await expect(page.getByRole('heading', { level: 1, name: 'Syllabi' })).toBeVisible()
  await expect(page.locator('#svelte-announcer')).toHaveText('Syllabi · Second Ink')
})

test('what is looked through tells how many are left', async ({ page }) => {
  await page.goto('/syllabus?syllabus=shoreline-science-level-2')
  const count = page.getByRole('region', { name: 'Topics' }).getByRole('status')
  await expect(count).toHaveText(/^\d+ topics$/)
  await page.getByRole('searchbox', { name: 'Title' }).fill('drift')
  await expect(count).toHaveText(/^1 of \d+ topics$/)
  await page.getByRole('searchbox', { name: 'Title' }).fill('no such words')
  await expect(count).toHaveText(/^0 of \d+ topics$/)
  await page.getByRole('button', { name: 'Show all' }).click()
  await expect(count).toHaveText(/^\d+ topics$/)
})
