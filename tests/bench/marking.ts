/**
 * npm run bench: how long marking takes in Node on this machine, for a page of the shipped syllabi's own words. Medians after a
 * warm-up; the first run makes the topic ready and reads the lexicon. Nothing is asserted: a machine has moods.
 */
import { readFileSync } from 'node:fs'
import { mark } from '../../src/lib/marking'
import { readSyllabus, type Point, type Topic } from '../../src/lib/syllabus'

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

for (const [words, count, runs] of [
  [300, 25, 40],
  [1_500, 100, 10],
  [10_000, 1_000, 2],
] as const) {
  const topic = topicOf(count)
  const page = pageOf(words)
  const times = Array.from({ length: runs + 1 }, () => {
    const start = performance.now()
    mark(topic, page)
    return performance.now() - start
  })
  const [first, ...rest] = times
  const median = rest.sort((a, b) => a - b)[Math.floor(rest.length / 2)]!
  console.log(
    `${words} words × ${count} points: median ${median.toFixed(1)} ms of ${runs} (first ${first!.toFixed(0)} ms)`,
  )
}
