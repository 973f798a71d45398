/**
 * The texts of tests/attacks/payloads.ts, brought in by every path there is and looked at on every page that shows them. None runs:
 * no script, no dialog, no request to another host (each test listens for those), no breach of the content security policy; and none
 * is a formula in a table that leaves.
 */
import { readdirSync, readFileSync } from 'node:fs'
import type { BrowserContext, Page } from '@playwright/test'
import { Document, Packer, Paragraph } from 'docx'
import papa from 'papaparse'
import { stringify } from 'yaml'
import { FORMULAS, HTML, POLLUTING, URLS } from '../attacks/payloads'
import { expect, test, topic, writeAndMark } from './app'

const RUNS = [...HTML, ...URLS].map((text) => text.replace(/\s+/g, ' ').trim())
const ALL = [...RUNS, ...FORMULAS.map((text) => text.trim())]
const HARM = HTML[2]!

/** Whether anything ran in any window of the test: dialogs, and the mark that the payloads leave. */
function watched(context: BrowserContext): () => Promise<void> {
  const dialogs: string[] = []
  context.on('dialog', (dialog) => {
    dialogs.push(dialog.message())
    void dialog.dismiss()
  })
  return async () => {
    expect(dialogs).toEqual([])
    for (const page of context.pages())
      expect(
        await page.evaluate(() => [Reflect.get(window, '__ran'), Reflect.get({}, 'polluted')]),
      ).toEqual([undefined, undefined])
  }
}

const file = (name: string, content: string | Buffer) => ({
  name,
  mimeType: '',
  buffer: Buffer.from(content as string),
})

const items = ALL.map((text, i) => `1.${i + 1} ${text}`)
const rows = [['topic', 'ref', 'text'], ...ALL.map((text, i) => [HARM, `${i + 1}`, text])]

/** Every text of a syllabus file is a payload, and its numbers are names that every object has. */
const ours = stringify({
  format: 1,
  title: HARM,
  note: RUNS[0],
  topics: [
    {
      title: `Attack ${HARM}`,
      caution: HTML[3],
      points: [
        ...[...POLLUTING, 'toString', 'hasOwnProperty'].map((ref) => ({
          ref,
          text: `Waves of ${ref} come in.`,
        })),
        ...ALL.map((text, i) => ({
          ref: `=${i}`,
          text: `Point ${text}`,
          cue: `Cue ${text}`,
          reject: [`Not ${text}`],
        })),
      ],
    },
  ],
})

const caseFile = JSON.stringify({
  CFDocument: { identifier: 'd', title: HARM },
  CFItems: [
    { identifier: 't', fullStatement: HARM },
    ...ALL.map((fullStatement, i) => ({
      identifier: `i${i}`,
      fullStatement,
      humanCodingScheme: `${i}`,
    })),
  ],
  CFAssociations: ['t', ...ALL.map((_, i) => `i${i}`)].map((from) => ({
    associationType: 'isChildOf',
    originNodeURI: { identifier: from },
    destinationNodeURI: { identifier: from === 't' ? 'd' : 't' },
  })),
})

const word = () =>
  Packer.toBuffer(
    new Document({
      title: HARM,
      sections: [{ children: items.map((text) => new Paragraph(text)) }],
    }),
  )

async function pdf(context: BrowserContext): Promise<Buffer> {
  const page = await context.newPage()
  await page.setContent('<title></title><main></main>')
  await page.evaluate((texts) => {
    for (const text of texts)
      document
        .querySelector('main')!
        .append(Object.assign(document.createElement('p'), { textContent: text }))
  }, items)
  const made = await page.pdf({ format: 'A4' })
  await page.close()
  return made
}

test('every built page has the strict policy, and nothing in it that the policy would refuse', async ({
  request,
}) => {
  const pages = readdirSync('build').filter((name) => name.endsWith('.html'))
  expect(pages.length).toBeGreaterThan(15)
  for (const name of pages) {
    const html = readFileSync(`build/${name}`, 'utf8')
    const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)![1]!
    const rules = new Map(policy.split('; ').map((rule) => [rule.split(' ')[0]!, rule]))
    expect(policy, name).not.toMatch(/unsafe-(?:inline|eval)|https?:|\*|blob:/)
    expect(rules.get('default-src')).toBe("default-src 'self'")
    expect(rules.get('script-src')).toMatch(/^script-src 'self'(?: 'sha256-[\w+/=]{44}')*$/)
    expect(rules.get('connect-src')).toBe("connect-src 'self'")
    for (const none of ['object-src', 'base-uri', 'form-action'])
      expect(rules.get(none)).toBe(`${none} 'none'`)
    // No handler and no style as an attribute.
    expect(html.replace(/<script>[^]*?<\/script>/g, '')).not.toMatch(
      /<[a-z][^>]*\s(?:on\w+|style)=/i,
    )
  }
  expect((await request.get('/check')).headers()['content-security-policy']).toBe(
    "frame-ancestors 'none'",
  )
})

test('a syllabus brought by any path is text, and so is a page written on it', async ({
  page,
  context,
}) => {
  const nothingRan = watched(context)
  const files = [
    file('a.txt', items.join('\n')),
    file('b.md', `# ${HARM}\n\n${RUNS.map((text) => `- ${text}`).join('\n')}`),
    file('c.csv', papa.unparse(rows)),
    file('d.tsv', papa.unparse(rows, { delimiter: '\t' })),
    file('e.json', caseFile),
    file('f.docx', await word()),
    file('g.pdf', await pdf(context)),
  ]
  await page.goto('/bring')
  await page.waitForLoadState('networkidle')
  const open = page.getByLabel('Open a syllabus file')
  const lines = page.getByRole('list', { name: 'Lines of the draft' })
  for (const one of files) {
    await open.setInputFiles(one)
    if (one.name.endsWith('pdf')) await page.getByRole('button', { name: /^Read th/ }).click()
    await expect(
      lines.getByRole('button', { name: '<svg onload=' }).first(),
      one.name,
    ).toBeVisible()
    await page.getByRole('button', { name: 'Throw the draft away' }).click()
    await page.getByRole('button', { name: 'Throw it away' }).click()
    await nothingRan()
  }

  await open.setInputFiles(file('h.yaml', ours))
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await page.getByRole('link', { name: /^Check yourself/ }).click()
  await page
    .getByRole('textbox', { name: 'Your page' })
    .fill(`Waves of constructor come in.\n${ALL.join('\n')}`)
  await page.keyboard.press('Control+Enter')
  await expect(page).toHaveURL(/\/marked\?check=/)
  await expect(page.getByRole('article')).toContainText(HARM)
  await nothingRan()
  const place = await page
    .getByRole('link', { name: 'How this topic is going' })
    .getAttribute('href')
  const query = new URL(place!, page.url()).search
  const marked = new URL(page.url())
  for (const path of [
    marked.pathname + marked.search,
    '/',
    `/topic${query}`,
    `/syllabus${query}`,
    '/syllabi',
    `/edit${query}`,
    `/sheet${query}`,
    `/drill${query}`,
    '/plan',
    '/tonight',
    '/data',
  ]) {
    await page.goto(path)
    await expect(page.locator('body')).toContainText(HARM.slice(0, 20))
    await nothingRan()
  }
})

const TEXTS = ['title', 'topicTitle', 'text', 'name', 'comment', 'cue', 'note', 'why']

/** A file that left, with a payload in front of its every text and a name for the prototype of every object in each of its own. */
const spoilt = (json: string): string =>
  JSON.stringify(JSON.parse(json), (key, value: unknown) => {
    if (typeof value === 'string') return TEXTS.includes(key) ? `=${HARM} ${value}` : value
    if (typeof value !== 'object' || value === null || Array.isArray(value) || key === '__proto__')
      return value
    return Object.defineProperty({ ...value }, '__proto__', {
      value: { polluted: true },
      enumerable: true,
    })
  })

interface Recall {
  readonly pupil: { readonly id: string }
  readonly checks: readonly { readonly check: { readonly id: string } }[]
}

/** What a tutor's file says back, with a payload in its every text. */
const returned = ({ pupil, checks }: Recall): string =>
  JSON.stringify({
    app: 'Second Ink',
    returnFile: 1,
    pupilId: pupil.id,
    tutor: { id: 'tutor', name: HARM },
    madeAtMs: Date.now(),
    checks: checks.map(({ check }) => ({
      checkId: check.id,
      comment: `${HARM} on all`,
      points: topic.points.map(({ ref }, i) => ({
        ref,
        outcome: 'partial',
        comment: RUNS[i % RUNS.length],
        atMs: Date.now(),
      })),
    })),
  })

async function saved(page: Page, button: string): Promise<string> {
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: button }).click()
  return readFileSync(await (await saving).path(), 'utf8')
}

/** OWASP, "CSV Injection": what begins a formula, with or without blanks before it. */
function expectNoFormula(csv: string): void {
  const cells = papa.parse<string[]>(csv.slice(1), { delimiter: ',' }).data.flat()
  expect(cells.some((cell) => cell.startsWith("'="))).toBe(true)
  expect(cells.filter((cell) => /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/.test(cell))).toEqual([])
}

test('a backup, a recall file, a file from a tutor and a log of papers are text', async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  const nothingRan = watched(context)
  await writeAndMark(page, ALL.join('\n'))
  await page.goto('/data')
  const backup = await saved(page, 'Save a backup file')
  await page.getByText('Choose what goes into the file').click()
  await page.getByLabel('Your name, as your tutor knows you').fill(HARM)
  const recall = await saved(page, 'Save a file for my tutor')

  const elsewhere = await browser.newContext({ baseURL: baseURL! })
  const nothingRanThere = watched(elsewhere)
  const tutor = await elsewhere.newPage()
  await tutor.goto('/data')
  await expect(tutor.getByText('Nothing yet.', { exact: false })).toBeVisible()
  await tutor.getByLabel('Open a backup file').setInputFiles(file('backup.json', spoilt(backup)))
  await tutor.getByRole('button', { name: 'Restore it' }).click()
  await expect(tutor.getByRole('status').filter({ hasText: 'Restored' })).toBeVisible()
  await tutor.goto(topic.atHome)
  await tutor.locator('section').filter({ hasText: 'Checks' }).last().getByRole('link').click()
  await expect(tutor.getByRole('article')).toContainText(HARM)
  await nothingRanThere()

  await tutor.goto('/group')
  await tutor.getByLabel('Open pupils’ files').setInputFiles(file('recall.json', spoilt(recall)))
  const pupil = tutor.getByRole('link', { name: HARM })
  await expect(pupil).toBeVisible()
  expectNoFormula(await saved(tutor, 'Save all of this as a table (CSV)'))
  await pupil.click()
  await expect(tutor.getByRole('heading', { level: 1 })).toContainText(HARM)
  expectNoFormula(await saved(tutor, 'Save all of it as a table (CSV)'))
  await nothingRanThere()
  await tutor.getByRole('link', { name: /^Mark it yourself/ }).click()
  await expect(tutor.getByRole('region', { name: 'The page' })).toContainText(HARM)
  await nothingRanThere()
  await elsewhere.close()

  await page
    .getByLabel('Open a file from my tutor')
    .setInputFiles(file('marks.json', returned(JSON.parse(recall) as Recall)))
  await page.getByRole('link', { name: topic.title }).first().click()
  await expect(page.getByText(`${HARM} on all`)).toBeVisible()
  await nothingRan()

  await page.goto('/papers')
  await page.getByRole('button', { name: 'Log a question or a paper' }).click()
  await page.getByLabel('Paper', { exact: true }).fill(`=${HARM}`)
  await page.getByLabel('Its number on the paper').fill('@SUM(1)')
  await page.getByLabel('Topic', { exact: true }).selectOption({ label: topic.title })
  await page.getByLabel('Marks won').fill('1')
  await page.getByLabel('Out of').fill('2')
  await page.getByLabel('In your own words').fill(ALL.join('\n'))
  await page.getByRole('button', { name: 'Log it' }).click()
  await expect(page.getByText(`=${HARM}`).first()).toBeVisible()
  expectNoFormula(await saved(page, 'Save the log as CSV'))
  await nothingRan()
})
