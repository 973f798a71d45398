/** The wall sheet: seen on the screen, and printed to PDF as the browser prints it, page by page. */
import type { Page } from '@playwright/test'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { expect, expectSoundAt, someOfIt, test, topic, writeAndMark } from './app'

const SYLLABUS = 'shoreline-science-level-2'
/** Upright paper in points of 1/72 inch. Source: ISO 216, in whole millimetres. */
const A4 = { width: (210 / 25.4) * 72, height: (297 / 25.4) * 72 }
const A3 = { width: (297 / 25.4) * 72, height: (420 / 25.4) * 72 }

interface Printed {
  readonly width: number
  readonly height: number
  readonly text: string
  readonly items: readonly { readonly text: string; readonly x: number; readonly y: number }[]
}

/** Printed as the page's own style asks; each page with its text and where it stands, from its lower left. */
async function printed(page: Page): Promise<Printed[]> {
  const data = new Uint8Array(await page.pdf({ preferCSSPageSize: true }))
  const pdf = await getDocument({ data, verbosity: 0 }).promise
  const pages: Printed[] = []
  for (let n = 1; n <= pdf.numPages; n += 1) {
    const one = await pdf.getPage(n)
    const [, , width = 0, height = 0] = one.view
    const { items } = await one.getTextContent()
    const runs = items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str.trim(), x: Number(item.transform[4]), y: Number(item.transform[5]) }]
        : [],
    )
    pages.push({
      width,
      height,
      text: oneLine(runs.map(({ text }) => text).join(' ')),
      items: runs,
    })
  }
  return pages
}
const oneLine = (text: string) => text.replace(/\s+/g, '')

const size = ({ width, height }: { width: number; height: number }, paper: typeof A4) => {
  // Browsers round the paper to whole pixels.
  expect(Math.abs(width - paper.width)).toBeLessThan(1.5)
  expect(Math.abs(height - paper.height)).toBeLessThan(1.5)
}

const open = async (page: Page, address: string) => {
  await page.goto(address)
  await page.getByRole('button', { name: 'Print', exact: true }).waitFor()
}
const pagesShown = (page: Page) => page.getByRole('group', { name: /^(?:Page|Leaf) \d+ of \d+/ })
const everyPoint = (topics: readonly string[], first: number) =>
  topics
    .flatMap((id, t) => Array.from({ length: 12 }, (_, i) => `${id}:${first + t}.${i + 1}`))
    .join(',')

const plain = topic.points.filter((point) => !('steps' in point))

test('the gaps of a check, on A4 and on A3: every missed point whole on one page', async ({
  page,
}) => {
  await writeAndMark(page, someOfIt)
  await page.getByRole('link', { name: 'A sheet for the wall' }).click()
  await page.getByRole('button', { name: 'Print', exact: true }).waitFor()
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
  await expect(pagesShown(page).first()).toContainText('Caution.')
  const said = topic.points.slice(0, 4)
  const missed = plain.slice(4)

  const a4 = await printed(page)
  await expect(pagesShown(page)).toHaveCount(a4.length)
  for (const one of a4) size(one, A4)
  for (const { text } of missed)
    expect(a4.filter((one) => one.text.includes(oneLine(text)))).toHaveLength(1)
  for (const { text } of said)
    expect(a4.filter((one) => one.text.includes(oneLine(text)))).toHaveLength(0)
  expect(a4[0]!.text).toContain(oneLine('Caution. Measuring at the water'))
  expect(a4.map(({ text }) => text).join('')).not.toContain('Points:')

  await page.getByLabel('A3').check()
  await page.getByLabel('two', { exact: true }).check()
  await expect(page).toHaveURL(/paper=a3/)
  const a3 = await printed(page)
  for (const one of a3) size(one, A3)
  expect(a3.length).toBeLessThanOrEqual(a4.length)
  for (const { text } of missed)
    expect(a3.filter((one) => one.text.includes(oneLine(text)))).toHaveLength(1)

  await page.reload()
  await expect(page.getByLabel('A3')).toBeChecked()
})

test('a long list goes over several pages, none of them empty, each point on one', async ({
  page,
}) => {
  const topics = [
    'waves-and-tides',
    'longshore-drift',
    'rocks-of-the-shore',
    'weathering-and-cliffs',
  ]
  await open(page, `/sheet?syllabus=${SYLLABUS}&points=${everyPoint(topics, 1)}`)
  await expect(page.getByText('48 points on A4.')).toBeVisible()
  const pages = await printed(page)
  await expect(pagesShown(page)).toHaveCount(pages.length)
  expect(pages.length).toBeGreaterThan(3)
  pages.forEach((one, i) => {
    size(one, A4)
    expect(one.text).toContain(`${i + 1}of${pages.length}`)
    expect(one.items.length).toBeGreaterThan(4)
  })
  for (const { text } of plain)
    expect(pages.filter((one) => one.text.includes(oneLine(text)))).toHaveLength(1)
  // Each topic's caution is printed.
  for (const caution of [
    'check the tide table',
    'Acid on rock samples',
    'Cliffs fall without warning',
  ])
    expect(pages.some(({ text }) => text.includes(oneLine(caution)))).toBe(true)
})

for (const [textSize, columns] of [
  ['small', 2],
  ['large', 2],
  ['largest', 2],
  ['largest', 1],
] as const) {
  test(`cards, ${textSize} text, ${columns} in a row: backs meet their fronts, and no card is cut off`, async ({
    page,
  }) => {
    const list = everyPoint(['longshore-drift', 'rocks-of-the-shore'], 2)
    await open(
      page,
      `/sheet?syllabus=${SYLLABUS}&points=${list}&as=cards&size=${textSize}&columns=${columns}`,
    )
    await expect(pagesShown(page).first()).toBeVisible()
    const over = await page
      .locator('.face')
      .evaluateAll((faces) => faces.filter((face) => face.scrollHeight > face.clientHeight).length)
    expect(over).toBe(0)

    const pages = await printed(page)
    await expect(pagesShown(page)).toHaveCount(pages.length)
    expect(pages.length % 2).toBe(0)
    // Long cards stand one in a row.
    const inRow = await page
      .locator('.grid')
      .evaluateAll((grids) => grids.map((grid) => (grid.classList.contains('columns-2') ? 2 : 1)))
    let met = 0
    for (let n = 0; n < pages.length; n += 2) {
      const [front, back] = [pages[n]!, pages[n + 1]!]
      size(front, A4)
      size(back, A4)
      for (const { text: ref, x, y } of front.items.filter(({ text }) =>
        /^[23]\.\d+$/.test(text),
      )) {
        const behind = back.items.filter(({ text }) => text === ref)
        expect(behind, `the back of ${ref}`).toHaveLength(1)
        // Both stand at the upper left of their card: the same height, and the mirrored column.
        expect(Math.abs(behind[0]!.y - y)).toBeLessThan(1)
        const half = front.width / 2
        const width = (front.width - (20 / 25.4) * 72) / 2
        const mirrored = inRow[n] === 1 ? x : x < half ? x + width : x - width
        expect(Math.abs(behind[0]!.x - mirrored)).toBeLessThan(1)
        met += 1
      }
    }
    expect(met).toBe(24)
    const backs = pages.filter((_, i) => i % 2 === 1)
    for (const { text } of plain.filter(({ text }) => !text.includes('divided')))
      expect(backs.filter((one) => one.text.includes(oneLine(text)))).toHaveLength(1)
    const fronts = pages.filter((_, i) => i % 2 === 0)
    for (const { text } of plain)
      expect(fronts.some((one) => one.text.includes(oneLine(text)))).toBe(false)
    expect(backs.some(({ text }) => text.includes(oneLine('check the tide table')))).toBe(true)
  })
}

test('a topic that was not checked says so, and points can be chosen by keyboard alone', async ({
  page,
}) => {
  await page.goto(`/sheet?syllabus=${SYLLABUS}&topic=longshore-drift`)
  await expect(page.getByText(/No point of this topic was checked yet/)).toBeVisible()
  await expect(page.getByRole('button', { name: 'Print', exact: true })).toBeDisabled()
  await page.getByRole('button', { name: 'Every point' }).focus()
  await page.keyboard.press('Enter')
  await expect(page.getByText('12 points on A4.')).toBeVisible()
  const first = page.getByRole('checkbox').first()
  await first.focus()
  await page.keyboard.press('Space')
  await expect(page.getByText('11 points on A4.')).toBeVisible()
  await page.reload()
  await expect(page.getByText('11 points on A4.')).toBeVisible()
  await page.getByLabel('A4').focus()
  await page.keyboard.press('ArrowRight')
  await expect(page.getByText('11 points on A3.')).toBeVisible()
  await expect(page.getByLabel('A3')).toBeFocused()
})

test('sheet, cards and the choice of a topic are sound on a phone and on a wide screen', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 900 })
  for (const address of [
    '/sheet',
    `/sheet?syllabus=${SYLLABUS}&points=${everyPoint(['longshore-drift'], 2)}`,
    `/sheet?syllabus=${SYLLABUS}&points=${everyPoint(['longshore-drift'], 2)}&as=cards&columns=2`,
    '/sheet?check=gone',
  ]) {
    await page.goto(address)
    await expect(page.getByText('Opening the points…')).toHaveCount(0)
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
    await expectSoundAt(page, [390, 1440])
  }
  await expect(page.getByRole('heading', { name: 'There is nothing here to print' })).toBeVisible()
})

test('where the browser keeps nothing, the points can still be chosen and printed', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError')
    }
  })
  await page.goto(`/sheet?syllabus=${SYLLABUS}&topic=longshore-drift`)
  await expect(page.getByRole('alert')).toContainText('does not let Second Ink keep')
  await page.getByRole('button', { name: 'Every point' }).click()
  await expect(page.getByText('12 points on A4.')).toBeVisible()
  const pages = await printed(page)
  expect(pages.some(({ text }) => text.includes(oneLine(plain[0]!.text)))).toBe(true)
})
