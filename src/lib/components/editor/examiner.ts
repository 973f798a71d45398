/** A marker that stays while a syllabus is edited, so that what is typed is marked at once; away from the page. */
import { wrap } from 'comlink'
import type { Report } from '$lib/marking'
import type { Topic } from '$lib/syllabus'
import type { Examined } from '$lib/view/findings'
import type { ExamineAnswer } from '../../../workers/answer-examine'
import type { MarkAnswer, MarkJob } from '../../../workers/answer-mark'
import type { MarkingJobs } from '../../../workers/marking.worker'

export interface Examiner {
  /** Both reject with a plain message. */
  readonly mark: (topic: Topic, text: string) => Promise<Report>
  readonly examine: (topic: Topic) => Promise<Examined>
  readonly close: () => void
}

interface Lane {
  readonly jobs: {
    readonly mark: (job: MarkJob) => Promise<MarkAnswer>
    readonly examine: (topic: Topic) => Promise<ExamineAnswer>
  }
  /** Rejects with a WorkerFault where the worker's file cannot be loaded: it answers nothing then. */
  readonly failed: Promise<never>
  readonly worker?: Worker
}

class WorkerFault extends Error {}

/** The worker starts with the first question. Where none can, the page does the work itself. */
export function openExaminer(): Examiner {
  let lane: Promise<Lane> | undefined

  async function ask<T>(question: (jobs: Lane['jobs']) => Promise<T>): Promise<T> {
    const { jobs, failed } = await (lane ??= Promise.resolve(inWorker() ?? onPage()))
    try {
      return await Promise.race([question(jobs), failed])
    } catch (error) {
      if (!(error instanceof WorkerFault)) throw error
      lane = onPage()
      return question((await lane).jobs)
    }
  }

  return {
    async mark(topic, text) {
      const answer = await ask((jobs) => jobs.mark({ topic, text }))
      if (answer.ok) return answer.report
      throw new Error(answer.fault)
    },
    async examine(topic) {
      const answer = await ask((jobs) => jobs.examine(topic))
      if (answer.ok) return answer.examined
      throw new Error(answer.fault)
    },
    close() {
      void lane?.then(({ worker }) => worker?.terminate())
      lane = undefined
    },
  }
}

function inWorker(): Lane | undefined {
  try {
    const worker = new Worker(new URL('../../../workers/marking.worker.ts', import.meta.url), {
      type: 'module',
      name: 'marking',
    })
    const failed = new Promise<never>((_, fail) => {
      worker.addEventListener('error', (event) => {
        event.preventDefault()
        fail(new WorkerFault())
      })
    })
    // Nobody may be waiting when it fails; the next question hears of it.
    failed.catch(() => undefined)
    return { jobs: wrap<MarkingJobs>(worker), failed, worker }
  } catch {
    return undefined
  }
}

async function onPage(): Promise<Lane> {
  const [{ answerMark }, { answerExamine }] = await Promise.all([
    import('../../../workers/answer-mark'),
    import('../../../workers/answer-examine'),
  ])
  return {
    jobs: {
      mark: (job) => Promise.resolve(answerMark(job)),
      examine: (topic) => Promise.resolve(answerExamine(topic)),
    },
    failed: new Promise(() => undefined),
  }
}
