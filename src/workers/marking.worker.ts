/** Marks pages away from the page, so that it never stands still. */
import { expose } from 'comlink'
import { answerMark, type MarkAnswer, type MarkJob } from './answer-mark'

const jobs = { mark: (job: MarkJob): MarkAnswer => answerMark(job) }

/** What the worker can be asked. */
export type MarkingJobs = typeof jobs

expose(jobs)
