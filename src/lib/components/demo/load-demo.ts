/** The demo: loaded on demand, marked by the real marker, kept all at once or not at all. */
import type { Now } from '$lib/recall'
import { addDemo } from '$lib/store'
import { loadShipped } from '../library'
import { openMarker } from '../marker'
import type { MarkedJob } from './records'

export interface DemoRun {
  /** Whether it was loaded; `false` once it was stopped. Rejects with a plain message. */
  readonly promise: Promise<boolean>
  /** Nothing is kept. Too late once everything is marked. */
  readonly stop: () => void
}

/** `onpage` is told how many pages are marked, of how many. */
export function loadDemo(now: Now, onpage: (marked: number, of: number) => void): DemoRun {
  let stop = () => {}
  const stopped = new Promise<'stopped'>((done) => (stop = () => done('stopped')))
  const load = async (): Promise<boolean> => {
    const [{ demoHistory }, { demoJobs, demoRecords }] = await Promise.all([
      import('./history'),
      import('./records'),
    ])
    const syllabus = await loadShipped(demoHistory.syllabusId)
    if (!syllabus) throw new Error('The syllabus of the demo does not come with this Second Ink.')
    const jobs = demoJobs(demoHistory, syllabus)
    const marked: MarkedJob[] = []
    const marker = openMarker()
    try {
      for (const job of jobs) {
        onpage(marked.length, jobs.length)
        const report = await Promise.race([marker.mark(job.topic, job.text), stopped])
        if (report === 'stopped') return false
        marked.push({ job, report })
      }
      onpage(marked.length, jobs.length)
    } finally {
      marker.stop()
    }
    await addDemo(demoRecords(demoHistory, syllabus, marked, now))
    return true
  }
  return { promise: load(), stop: () => stop() }
}
