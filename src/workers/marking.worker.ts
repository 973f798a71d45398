/** Marks pages away from the page, so that it never stands still; looks through topics for those who write them. */
import { expose } from 'comlink'
import type { Topic } from '../lib/syllabus'
import { answerExamine, type ExamineAnswer } from './answer-examine'
import { answerMark, type MarkAnswer, type MarkJob } from './answer-mark'

const jobs = {
  mark: (job: MarkJob): MarkAnswer => answerMark(job),
  examine: (topic: Topic): ExamineAnswer => answerExamine(topic),
}

/** What the worker can be asked. */
export type MarkingJobs = typeof jobs

expose(jobs)
