/**
 * npm run bench:browser -- tests/bench/typing.ts: what a key costs on a page of 5,000 words, in Chromium with the built app, by the browser's own trace. For each
 * key the tasks of the page's main thread from it to the next one: the longest, which is what can hold a frame back (16.7 ms at 60
 * frames a second), in time and in processor time, which does not depend on what else the machine does. Nothing is asserted.
 */
import { chromium, type Page } from '@playwright/test'
import { findBrowser } from '../../src/cli/browser.js'
import { serve } from '../../src/cli/serve.js'

const WORDS = 5_000
const KEYS = 200
const PATH = '/check?syllabus=shoreline-science-level-2&topic=longshore-drift'
const SAID =
  'Waves reach the beach at an angle because of the prevailing wind and the backwash runs straight down. '

interface TraceEvent {
  readonly name: string
  readonly pid: number
  readonly tid: number
  /** Microseconds, `tdur` of the processor. */
  readonly ts: number
  readonly dur?: number
  readonly tdur?: number
  readonly args?: { readonly name?: string; readonly data?: { readonly type?: string } }
}

const textOf = (words: number): string => {
  const all = SAID.repeat(Math.ceil(words / 18))
    .split(' ')
    .slice(0, words)
  // A line break now and then, as on a page.
  return all.map((word, i) => (i % 90 === 89 ? `${word}\n` : `${word} `)).join('')
}

async function traced(page: Page, where: 'at the end' | 'in the middle'): Promise<TraceEvent[]> {
  const area = page.getByRole('textbox', { name: 'Your page' })
  await area.evaluate((element: HTMLTextAreaElement, middle) => {
    const at = middle ? element.value.length / 2 : element.value.length
    element.focus()
    element.setSelectionRange(at, at)
  }, where === 'in the middle')
  await page.waitForTimeout(2_000)
  const browser = page.context().browser()!
  await browser.startTracing(page, {
    categories: ['devtools.timeline', 'disabled-by-default-devtools.timeline', '__metadata'],
  })
  for (let key = 0; key < KEYS; key += 1) {
    await page.keyboard.press(key % 6 === 5 ? 'Space' : 'w')
    await page.waitForTimeout(60)
  }
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString('utf8')) as {
    traceEvents: TraceEvent[]
  }
  return traceEvents
}

/** By key: the longest task until the next key, in milliseconds. */
function longest(events: readonly TraceEvent[], of: 'dur' | 'tdur'): number[] {
  const pressed = events.filter(
    ({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'keydown',
  )
  const { pid, tid } = pressed[0]!
  const tasks = events.filter(
    (event) => event.name === 'RunTask' && event.pid === pid && event.tid === tid,
  )
  return pressed.map(({ ts }, i) => {
    const until = pressed[i + 1]?.ts ?? Infinity
    const own = tasks.filter((task) => task.ts + (task.dur ?? 0) > ts && task.ts < until)
    return Math.max(0, ...own.map((task) => (task[of] ?? 0) / 1000))
  })
}

function tell(what: string, times: number[]): void {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.floor((sorted.length - 1) * share)]!.toFixed(1)
  console.log(
    `${what}: median ${at(0.5)} ms, 95th of 100 ${at(0.95)} ms, longest ${at(1)} ms of ${times.length} keys`,
  )
}

const { url, close } = await serve({ port: 0 })
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
})
try {
  const page = await browser.newPage({ baseURL: url, viewport: { width: 1280, height: 900 } })
  await page.goto(PATH)
  await page.getByRole('heading', { name: 'Longshore drift' }).waitFor()
  await page.getByRole('textbox', { name: 'Your page' }).fill(textOf(WORDS))
  for (const where of ['at the end', 'in the middle'] as const) {
    const events = await traced(page, where)
    tell(`${WORDS} words, ${where}, time`, longest(events, 'dur'))
    tell(`${WORDS} words, ${where}, processor time`, longest(events, 'tdur'))
  }
} finally {
  await browser.close()
  await close()
}
