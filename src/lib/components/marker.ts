/** Runs the marker in a worker; where no worker starts, on the page itself. */
import { wrap } from 'comlink'
import type { Learned, Report } from '$lib/marking'
import type { Topic } from '$lib/syllabus'
import type { MarkAnswer, MarkJob } from '../../workers/answer-mark'
import type { MarkingJobs } from '../../workers/marking.worker'

export interface MarkRun {
  /** Rejects with a plain message where the topic cannot be marked; never settles once it was stopped. */
  readonly promise: Promise<Report>
  /** Ends the work; nothing comes of it. */
  readonly stop: () => void
}

/** A marker that is kept open for one page after the other. */
export interface OpenMarker {
  /** As the promise of a `MarkRun`. */
  readonly mark: (topic: Topic, text: string, learned?: Learned) => Promise<Report>
  /** Ends the work, and the worker with it. */
  readonly stop: () => void
}

/** Marks `text` against `topic`, after what its points have learnt. The worker is started for this job and ended with it: marking is rare, and memory is dear. */
export function markInWorker(topic: Topic, text: string, learned?: Learned): MarkRun {
  const marker = openMarker()
  return { promise: marker.mark(topic, text, learned).finally(marker.stop), stop: marker.stop }
}

/** Whoever opens it stops it. */
export function openMarker(): OpenMarker {
  const worker = startWorker()
  if (!worker)
    return {
      mark: (topic, text, learned) => markHere(jobOf(topic, text, learned)).then(reportOf),
      stop: () => undefined,
    }

  const failed = new Promise<never>((_, fail) => {
    // A worker whose file cannot be loaded says so here and answers nothing.
    worker.addEventListener('error', (event) => {
      event.preventDefault()
      fail(new WorkerFault())
    })
  })
  // It may fail between two pages, while nobody waits for it.
  failed.catch(() => undefined)
  const jobs = wrap<MarkingJobs>(worker)
  let stopped = false
  const mark = (topic: Topic, text: string, learned?: Learned) => {
    const job = jobOf(topic, text, learned)
    return Promise.race([jobs.mark(job), failed])
      .catch((error: unknown) => {
        if (error instanceof WorkerFault) return markHere(job)
        throw error
      })
      .then((answer) => (stopped ? new Promise<never>(() => undefined) : reportOf(answer)))
  }
  return {
    mark,
    stop: () => {
      stopped = true
      worker.terminate()
    },
  }
}

const jobOf = (topic: Topic, text: string, learned: Learned | undefined): MarkJob => ({
  topic,
  text,
  ...(learned ? { learned } : {}),
})

class WorkerFault extends Error {}

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('../../workers/marking.worker.ts', import.meta.url), {
      type: 'module',
      name: 'marking',
    })
  } catch {
    return undefined
  }
}

async function markHere(job: MarkJob): Promise<MarkAnswer> {
  const { answerMark } = await import('../../workers/answer-mark')
  return answerMark(job)
}

function reportOf(answer: MarkAnswer): Report {
  if (answer.ok) return answer.report
  throw new Error(answer.fault)
}
