/** Starts the import worker for one piece of work, and ends it with that. */
import { wrap } from 'comlink'
import type { DraftRead } from '$lib/syllabus/import'
import type { ImportJobs } from '../../../workers/import.worker'

export interface ImportRun<T> {
  /** Never settles once it was stopped. */
  readonly promise: Promise<T>
  readonly stop: () => void
}

type Answers = {
  readonly [K in keyof ImportJobs]: (
    ...args: Parameters<ImportJobs[K]>
  ) => Promise<Awaited<ReturnType<ImportJobs[K]>>>
}

export function runImport<T>(job: (jobs: Answers) => Promise<T>): ImportRun<T> {
  if (typeof Worker === 'undefined') return { promise: here(job), stop: () => undefined }
  const worker = new Worker(new URL('../../../workers/import.worker.ts', import.meta.url), {
    type: 'module',
    name: 'import',
  })
  const failed = new Promise<never>((_, fail) => {
    worker.addEventListener('error', (event) => {
      event.preventDefault()
      fail(
        new Error(
          'The file could not be read: the browser ran out of memory, or the app is only half loaded. Load the page again.',
        ),
      )
    })
  })
  return {
    promise: Promise.race([job(wrap<ImportJobs>(worker) as unknown as Answers), failed]).finally(
      () => worker.terminate(),
    ),
    stop: () => worker.terminate(),
  }
}

async function here<T>(job: (jobs: Answers) => Promise<T>): Promise<T> {
  const jobs = await import('../../../workers/answer-import')
  return job(jobs as unknown as Answers)
}

export type { DraftRead }
