/**
 * npm run bench:browser -- tests/bench/check-page.ts: how soon the page that is written on can be written on, on a slow phone with a slow line, in Chromium with the
 * built app: the processor slowed four times (DevTools protocol, Emulation.setCPUThrottlingRate), the line 1.6 Mbit/s with 150 ms of
 * delay for each request (Network.emulateNetworkConditions; "slow 4G" of Lighthouse's documentation of throttling). Lighthouse's own
 * setting for browsers, which stands for the round trips of a connection as well, is harder: 562.5 ms and 1.44 Mbit/s.
 *
 * "Typed" is when the first key of somebody who presses keys all the time stands on the page, drawn; "kept" when it is in the
 * browser's storage. First visits have nothing cached; a later one has the service worker. Nothing is asserted: a machine has moods.
 */
import { chromium, type Browser, type CDPSession } from '@playwright/test'
import { findBrowser } from '../../src/cli/browser.js'
import { serve } from '../../src/cli/serve.js'

const RUNS = 7
const PATH = '/check?syllabus=shoreline-science-level-2&topic=longshore-drift'
const LINES = [
  { name: '150 ms, 1.6 Mbit/s', latency: 150, kbps: 1_600 },
  { name: '562.5 ms, 1.44 Mbit/s', latency: 562.5, kbps: 1_440 },
]

/** In the page, from its first moment: when the letter x stands in the text area and a frame was drawn after it, and when it is kept. */
const WATCH = `
  const seen = (window.__seen = {})
  const look = () => {
    const area = document.querySelector('textarea')
    if (!seen.typed && area?.value.includes('x')) requestAnimationFrame(() => { seen.typed ??= performance.now() })
    if (!seen.ready && document.querySelector('h1')?.textContent === 'Longshore drift') seen.ready = performance.now()
    if (!seen.kept && document.querySelector('.keeping')?.textContent === 'Kept') seen.kept = performance.now()
    if (!seen.typed || !seen.kept) setTimeout(look, 10)
  }
  look()
`

interface Seen {
  readonly typed: number
  readonly ready: number
  readonly kept: number
}

async function slowed(session: CDPSession, { latency, kbps }: (typeof LINES)[number]) {
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  await session.send('Network.enable')
  const throughput = (kbps * 1_000) / 8
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency,
    downloadThroughput: throughput,
    uploadThroughput: throughput,
  })
}

async function visit(
  browser: Browser,
  url: string,
  line: (typeof LINES)[number],
  again: boolean,
): Promise<Seen> {
  const context = await browser.newContext({
    baseURL: url,
    serviceWorkers: again ? 'allow' : 'block',
  })
  if (again) {
    const before = await context.newPage()
    await before.goto('/')
    const ready = () => before.evaluate(() => navigator.serviceWorker.controller !== null)
    while (!(await ready())) await before.waitForTimeout(100)
    await before.close()
  }
  const page = await context.newPage()
  await page.addInitScript(WATCH)
  const session = await context.newCDPSession(page)
  await slowed(session, line)
  let typing = true
  const going = page.goto(PATH, { waitUntil: 'commit' })
  const keys = (async () => {
    await going
    while (typing) {
      await session.send('Input.dispatchKeyEvent', {
        type: 'keyDown',
        text: 'x',
        key: 'x',
        code: 'KeyX',
      })
      await session.send('Input.dispatchKeyEvent', { type: 'keyUp', key: 'x', code: 'KeyX' })
      await new Promise((done) => setTimeout(done, 30))
    }
  })().catch(() => undefined)
  const done = () => page.evaluate<boolean>('!!(window.__seen?.typed && window.__seen?.kept)')
  await going
  while (!(await done())) await page.waitForTimeout(100)
  typing = false
  await keys
  const seen = await page.evaluate<Seen>('window.__seen')
  await context.close()
  return seen
}

const middle = (numbers: number[]) =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!

const { url, close } = await serve({ port: 0 })
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
})
try {
  for (const line of LINES)
    for (const again of [false, true]) {
      const seen: Seen[] = []
      for (let run = 0; run < RUNS; run += 1) seen.push(await visit(browser, url, line, again))
      const told = (['typed', 'ready', 'kept'] as const).map(
        (what) =>
          `${what} ${middle(seen.map((one) => one[what])).toFixed(0)} ms (slowest ${Math.max(...seen.map((one) => one[what])).toFixed(0)})`,
      )
      console.log(
        `${again ? 'later' : 'first'} visit, ${line.name}: ${told.join(', ')}; medians of ${RUNS}`,
      )
    }
} finally {
  await browser.close()
  await close()
}
