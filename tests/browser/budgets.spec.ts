/** What pages fetch before they can be used, counted in a browser as a host with gzip sends it, against budgets.ts. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { BrowserContext } from '@playwright/test'
import { expect, test } from './app'
import { FIRST_LOADS, FIRST_WORD, HEAVY, PIECES } from './budgets'

test.use({ apart: true })

interface Fetched {
  readonly path: string
  readonly kB: number
  readonly text: string
}

const weighed = (path: string, body: Buffer): Fetched => ({
  path,
  kB: gzipSync(body).length / 1000,
  text: body.toString('latin1'),
})

/** The scripts, styles and pages that one address fetches, until nothing more comes. */
async function firstLoad(context: BrowserContext, address: string): Promise<Fetched[]> {
  const page = await context.newPage()
  const bodies: Promise<Fetched | undefined>[] = []
  page.on('response', (response) => {
    const { pathname } = new URL(response.url())
    // A worker starts when the page is there, and has a budget of its own.
    if (!/\.(?:png|svg|webmanifest)$|\/workers\//.test(pathname))
      bodies.push(
        response.body().then(
          (body) => weighed(pathname, body),
          // It came when the page was being closed.
          () => undefined,
        ),
      )
  })
  await page.goto(address, { waitUntil: 'networkidle' })
  const fetched = await Promise.all(bodies)
  await page.close()
  return fetched.filter((one) => one !== undefined)
}

/** By the manifest of the build: what stands in the file at a path. */
const names = new Map(
  Object.values(
    JSON.parse(readFileSync('.svelte-kit/output/client/.vite/manifest.json', 'utf8')) as Record<
      string,
      { file: string; name?: string }
    >,
  ).map(({ file, name }) => [`/${file}`, name]),
)

/** '' within the budget, else what is over it, with its largest pieces by name. */
function over(what: string, most: number, fetched: readonly Fetched[]): string {
  const all = fetched.reduce((sum, { kB }) => sum + kB, 0)
  if (all <= most) return ''
  const largest = [...fetched]
    .sort((a, b) => b.kB - a.kB)
    .slice(0, 8)
    .map(({ path, kB }) => `${kB.toFixed(1)} ${names.get(path) ?? ''} ${path}`)
  return `${what} is ${all.toFixed(1)} kB, its budget ${most} kB. Its largest:\n${largest.join('\n')}`
}

const built = readdirSync('build', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(?:js|css|html)$/.test(path))
  .map((path) => weighed(`/${path.replaceAll('\\', '/')}`, readFileSync(join('build', path))))

test('every page is within its budget, and none begins with a heavy library', async ({
  context,
}) => {
  const wrong: string[] = []
  const waiting = [...FIRST_LOADS]
  const line = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const { what, kB } = next
      const fetched = await firstLoad(context, what)
      wrong.push(over(what, kB, fetched))
      for (const { library, words, except } of HEAVY)
        if (!what.startsWith(except ?? '?'))
          for (const { path, text } of fetched)
            if (text.includes(words)) wrong.push(`${what} begins with ${library}, in ${path}`)
    }
  }
  await Promise.all([line(), line(), line(), line()])
  expect(wrong.filter((said) => said !== '').join('\n\n')).toBe('')
})

test('every page of the app has a budget, and what is fetched later is within its own', () => {
  const pages = built.map(({ path }) => path).filter((path) => path.endsWith('.html'))
  const places = FIRST_LOADS.map(({ what }) => what.replace(/\?.*/, '').replace(/^\/$/, '/index'))
  expect(pages.map((path) => path.replace('.html', '')).sort()).toEqual([...places, '/200'].sort())

  const wrong = PIECES.map(({ what, kB, file }) => {
    const found = built.filter(({ path }) => file.test(path))
    return found.length === 0 ? `${what}: no such file` : over(what, kB, found)
  })
  expect(wrong.filter((said) => said !== '').join('\n\n')).toBe('')
  // A word that stands nowhere would keep nothing out.
  for (const { words } of HEAVY)
    expect(built.filter(({ text }) => text.includes(words))).not.toEqual([])
})

test('the page that is written on waits for its document alone, and that is small', () => {
  const html = readFileSync('build/check.html', 'utf8')
  expect(html).toContain('<textarea')
  // A style or a script of its own that is not a module would hold back the first paint.
  expect(html.match(/<script[^>]*\bsrc=|<link(?![^>]*\bdisabled)[^>]*rel="?stylesheet/g)).toBeNull()
  const document = built.filter(({ path }) => path === '/check.html')
  // The links of the styles that stand in the document are there for later pages alone.
  const atOnce = built.filter(({ path }) => path.endsWith('.js') && html.includes(`.${path}"`))
  expect(atOnce.length).toBeGreaterThan(3)
  expect(over('the page that is written on', FIRST_WORD.document, document)).toBe('')
  expect(over('what it fetches at once', FIRST_WORD.fetchedAtOnce, atOnce)).toBe('')
})
