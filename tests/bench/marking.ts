/**
 * npm run bench: how long marking takes in Node on this machine, for a page of the shipped syllabi's own words, beside what two
 * general-purpose libraries take to find each point's terms on the same page: Fuse.js (fuzzy search) and MiniSearch (full-text search,
 * fuzzy). They do a part of the work: they neither read statements nor tell full from contradicted. Medians after a warm-up; the first run
 * of the marker reads the lexicon as well. Nothing is asserted: a machine has moods.
 */
import { readFileSync } from 'node:fs'
import Fuse from 'fuse.js'
import MiniSearch from 'minisearch'
import { mark } from '../../src/lib/marking'
import { readSyllabus, type Point, type Topic } from '../../src/lib/syllabus'

const SIZES = [
  { words: 300, count: 25, runs: 200 },
  { words: 1_500, count: 100, runs: 25 },
  { words: 10_000, count: 1_000, runs: 3 },
] as const

const read = readSyllabus(
  readFileSync(new URL('../../syllabi/shoreline-science-2.yaml', import.meta.url), 'utf8'),
)
if (!read.ok) throw new Error('the shipped syllabus cannot be read')
const points = read.syllabus.topics.flatMap((topic) => topic.points)

function topicOf(count: number): Topic {
  const some: Point[] = Array.from({ length: count }, (_, i) => ({
    ...points[i % points.length]!,
    ref: String(i + 1),
  }))
  return { id: 'bench', title: 'The shore', points: some }
}

function pageOf(words: number): string {
  const all = points
    .map((point) => point.text)
    .join('\n')
    .split(/(?<=\s)/)
  return Array.from({ length: words }, (_, i) => all[i % all.length]).join('')
}

/** The terms of a point: the words of its text of more than three letters, each once. */
const termsOf = ({ text }: Point): string[] => [
  ...new Set(text.toLowerCase().match(/\p{L}{4,}/gu) ?? []),
]
const linesOf = (page: string) =>
  page.split(/(?<=[.\n])\s*/).flatMap((text, id) => (text.trim() === '' ? [] : [{ id, text }]))

const JOBS: Readonly<Record<string, (topic: Topic, page: string) => void>> = {
  'Second Ink': (topic, page) => void mark(topic, page),
  // The first page of a topic: its ideas are made ready as well.
  'a new topic': (topic, page) => void mark(structuredClone(topic), page),
  'Fuse.js': (topic, page) => {
    const fuse = new Fuse(linesOf(page), {
      keys: ['text'],
      includeScore: true,
      ignoreLocation: true,
      threshold: 0.2,
    })
    for (const point of topic.points) for (const term of termsOf(point)) fuse.search(term)
  },
  MiniSearch: (topic, page) => {
    const index = new MiniSearch({ fields: ['text'] })
    index.addAll(linesOf(page))
    for (const point of topic.points)
      for (const term of termsOf(point)) index.search(term, { fuzzy: 0.2, prefix: true })
  },
}

/** Fuse.js goes through every line for every term: at the largest size it is measured on a tenth of the points, and told so. */
const SHARE: Readonly<Record<string, number>> = { 'Fuse.js': 0.1 }

for (const [name, job] of Object.entries(JOBS)) {
  let before: { median: number; size: number } | undefined
  for (const { words, count, runs } of SIZES) {
    const share = count === 1_000 ? (SHARE[name] ?? 1) : 1
    const topic = topicOf(count * share)
    const page = pageOf(words)
    const times = Array.from({ length: runs + 1 }, () => {
      const start = performance.now()
      job(topic, page)
      return (performance.now() - start) / share
    })
    const [first, ...rest] = times
    const median = rest.sort((a, b) => a - b)[Math.floor(rest.length / 2)]!
    const size = words + count
    const growth = before
      ? `; ${(median / before.median).toFixed(1)} times as long for ${(size / before.size).toFixed(1)} times the words + points`
      : ''
    console.log(
      `${name.padEnd(11)} ${words} words × ${count} points: median ${median.toFixed(1)} ms of ${runs} (first ${first!.toFixed(0)} ms)${share < 1 ? ', reckoned from a tenth of the points' : ''}${growth}`,
    )
    before = { median, size }
  }
}
