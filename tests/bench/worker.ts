/**
 * npm run bench:browser -- tests/bench/worker.ts: how long marking takes as a page sees it: the built app's worker in Chromium, asked as the page asks it. "Cold" is
 * from the start of the worker, its word lists and the topic included, as for every page that is marked; "warm" is the next page for
 * the same worker, as for a pile of pages. Nothing is asserted: a machine has moods.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { chromium } from '@playwright/test'
import { findBrowser } from '../../src/cli/browser.js'
import { serve } from '../../src/cli/serve.js'
import { readSyllabus, type Point, type Topic } from '../../src/lib/syllabus'

const SIZES = [
  { words: 300, count: 25, runs: 7 },
  { words: 1_500, count: 100, runs: 5 },
  { words: 10_000, count: 1_000, runs: 3 },
] as const

const read = readSyllabus(readFileSync('syllabi/shoreline-science-2.yaml', 'utf8'))
if (!read.ok) throw new Error('the shipped syllabus cannot be read')
const points = read.syllabus.topics.flatMap((topic) => topic.points)

const topicOf = (count: number): Topic => ({
  id: 'bench',
  title: 'The shore',
  points: Array.from({ length: count }, (_, i): Point => ({
    ...points[i % points.length]!,
    ref: String(i + 1),
  })),
})

function pageOf(words: number): string {
  const all = points
    .map((point) => point.text)
    .join('\n')
    .split(/(?<=\s)/)
  return Array.from({ length: words }, (_, i) => all[i % all.length]).join('')
}

interface Times {
  readonly cold: number
  readonly warm: number
}

/** In the page: a worker, asked twice in the words of comlink. Text, because tsx names functions. */
const timed = (
  script: string,
  job: { topic: Topic; text: string },
) => `new Promise((done, fail) => {
  const job = ${JSON.stringify(job)}
  const start = performance.now()
  const worker = new Worker(${JSON.stringify(script)}, { type: 'module' })
  worker.onerror = () => fail(new Error('the worker did not start'))
  const ask = () => new Promise((answered) => {
    const id = String(Math.random())
    const hear = ({ data }) => { if (data?.id === id) { worker.removeEventListener('message', hear); answered(data) } }
    worker.addEventListener('message', hear)
    worker.postMessage({ id, type: 'APPLY', path: ['mark'], argumentList: [{ type: 'RAW', value: job }] })
  })
  ask().then((first) => {
    const cold = performance.now() - start
    if (!first.value?.ok) return fail(new Error(JSON.stringify(first).slice(0, 200)))
    const again = performance.now()
    return ask().then(() => { worker.terminate(); done({ cold, warm: performance.now() - again }) })
  })
})`

const middle = (numbers: number[]) =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!.toFixed(0)

const script = readdirSync('build/_app/immutable/workers').find((name) =>
  name.startsWith('marking.'),
)
const { url, close } = await serve({ port: 0 })
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
})
try {
  const page = await browser.newPage({ baseURL: url })
  await page.goto('/help')
  for (const { words, count, runs } of SIZES) {
    const job = { topic: topicOf(count), text: pageOf(words) }
    const times: Times[] = []
    for (let run = 0; run < runs; run += 1)
      times.push(await page.evaluate<Times>(timed(`/_app/immutable/workers/${script}`, job)))
    console.log(
      `${words} words × ${count} points: cold ${middle(times.map(({ cold }) => cold))} ms, warm ${middle(times.map(({ warm }) => warm))} ms; medians of ${runs}`,
    )
  }
} finally {
  await browser.close()
  await close()
}
