// node tests/bench/tutor.js: 30 pupils with 500 checks each, in a real browser: how long the files take to open, and each page.
// Needs a built app (npm run build). Figures only; nothing is asserted: a machine has moods.
import { Buffer } from 'node:buffer'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { findBrowser } from '../../src/cli/browser.js'
import { serve } from '../../src/cli/serve.js'

const PUPILS = 30
const CHECKS = 500
const TOPICS = 25
const POINTS = 24
const DAY_MS = 86_400_000
const START_MS = Date.parse('2026-01-05T16:00:00Z')
const OUTCOMES = ['full', 'full', 'full', 'partial', 'missed', 'contradicted']

const topics = Array.from({ length: TOPICS }, (_, t) => ({
  id: `topic-${t}`,
  title: `Shore topic ${t + 1}`,
  points: Array.from({ length: POINTS }, (_, p) => ({
    ref: `${t + 1}.${p + 1}`,
    text: `Point ${p + 1} of topic ${t + 1} says what waves, sand and tides do on this part of the shore.`,
    ideas: [],
  })),
}))

/**
 * The place of a list that is there.
 *
 * @template T
 * @param {readonly T[]} list
 * @param {number} i
 * @returns {T}
 */
function at(list, i) {
  const one = list[i]
  if (one === undefined) throw new RangeError(`Nothing stands at ${i}.`)
  return one
}

/** @param {number} pupil @param {boolean} withText */
function fileOf(pupil, withText) {
  const checks = Array.from({ length: CHECKS }, (_, c) => {
    const t = c % TOPICS
    const topic = at(topics, t)
    const marks = topic.points.map(({ ref }, p) => ({
      ref,
      outcome: OUTCOMES[(pupil * 7 + c * 3 + p * 5) % OUTCOMES.length],
    }))
    const text = topic.points
      .map((point) => point.text)
      .join('\n')
      .slice(0, 1500)
    const check = {
      schema: 1,
      id: `check-${c}`,
      kind: 'check',
      syllabusId: 'shore',
      topicId: topic.id,
      topicTitle: topic.title,
      atMs: START_MS + Math.floor(c / 3) * DAY_MS + (c % 3) * 3_600_000,
      zone: 'Europe/London',
      marks,
      changes:
        c % 4 === 0
          ? [{ ref: at(marks, 0).ref, outcome: 'full', by: 'student', atMs: START_MS }]
          : [],
      marker: '1.0.0',
      writingMs: 600_000,
      words: 180,
      pastes: [],
      aways: 1,
      awayMs: 20_000,
    }
    const points = marks.map(({ ref, outcome }, p) => ({
      ref,
      outcome,
      ideas: [
        {
          idea: 'waves',
          kind: 'idea',
          found: outcome === 'full',
          spans: [{ start: p, end: p + 5 }],
        },
      ],
      drafted: true,
      offered: false,
      sureness: 0.8,
      why: 'You said: waves. You did not say: sand.',
    }))
    const report = {
      marker: '1.0.0',
      topic: topic.id,
      points,
      statements: [{ start: 0, end: 60 }],
      beyond: [],
    }
    return { check, topic: t, ...(withText ? { page: { text, report } } : {}) }
  })
  const file = {
    app: 'Second Ink',
    recallFile: 1,
    pupil: { id: `pupil-${pupil}`, name: `Pupil ${pupil + 1}` },
    madeAtMs: START_MS + 400 * DAY_MS,
    topics,
    checks,
  }
  return Buffer.from(JSON.stringify(file))
}

/** @param {boolean} withText */
const filesOf = (withText) =>
  Array.from({ length: PUPILS }, (_, pupil) => ({
    name: `pupil-${pupil}.json`,
    mimeType: 'application/json',
    buffer: fileOf(pupil, withText),
  }))

const { url, close } = await serve({ port: 0 })
const how = {
  baseURL: url,
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
}
try {
  for (const withText of [false, true]) {
    // A profile on the disk, as people have: a private window keeps everything in memory.
    const profile = mkdtempSync(join(tmpdir(), 'second-ink-bench-'))
    const context = await chromium.launchPersistentContext(profile, how)
    const page = await context.newPage()
    const files = filesOf(withText)
    const megabytes = files.reduce((sum, { buffer }) => sum + buffer.length, 0) / 1e6
    console.log(
      `${withText ? 'with' : 'without'} text: ${PUPILS} files, ${megabytes.toFixed(0)} MB`,
    )
    await page.goto('/group')
    await page.getByLabel('Open pupils’ files').waitFor({ state: 'attached' })
    // Playwright hands over 50 MB at most in one call.
    const most = Math.max(1, Math.floor((45 / megabytes) * PUPILS))
    let openMs = 0
    for (let first = 0; first < files.length; first += most) {
      const some = files.slice(first, first + most)
      await page.getByLabel('Open pupils’ files').setInputFiles(some)
      // The clock starts when the page has the files.
      const from = Date.now()
      await page
        .locator('.opened li')
        .nth(some.length - 1)
        .waitFor()
      await page.locator('table').first().waitFor()
      openMs += Date.now() - from
      await page.goto('/group')
    }
    console.log(`  opening all files: ${openMs} ms`)
    // The browser goes on writing to the disk for a while after it has said that everything is kept.
    await page.waitForTimeout(30_000)
    for (const [name, path, ready] of /** @type {const} */ ([
      ['group', '/group', 'table a[href*="pupil-7"]'],
      ['pupil', '/pupil?pupil=pupil-7', '#checks'],
      ['moderate', '/moderate?pupil=pupil-7&check=check-3', '#points'],
    ])) {
      /** @type {number[]} */
      const times = []
      for (let i = 0; i < 5; i++) {
        await page.goto('/help', { waitUntil: 'networkidle' })
        // Within the app, as by a link: from the click to the first frame that has the content.
        times.push(
          await page.evaluate(
            async ({ to, selector }) => {
              const link = document.createElement('a')
              link.href = to
              document.querySelector('main')?.append(link)
              const from = performance.now()
              link.click()
              while (!document.querySelector(selector)) await new Promise(requestAnimationFrame)
              return performance.now() - from
            },
            { to: path, selector: ready },
          ),
        )
      }
      times.sort((a, b) => a - b)
      console.log(
        `  ${name}: median ${at(times, 2).toFixed(0)} ms of ${times.map((t) => t.toFixed(0)).join(', ')}`,
      )
    }
    await context.close()
    rmSync(profile, { recursive: true, force: true })
  }
} finally {
  await close()
}
