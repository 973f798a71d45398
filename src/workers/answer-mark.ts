/** One marking job -> its answer. A fault is a value: what a worker throws arrives without its kind. */
import { mark, type Learned, type Report } from '../lib/marking'
import type { Topic } from '../lib/syllabus'

export interface MarkJob {
  readonly topic: Topic
  readonly text: string
  /** What was marked of the points before, by ref. */
  readonly learned?: Learned
}

export type MarkAnswer =
  { readonly ok: true; readonly report: Report } | { readonly ok: false; readonly fault: string }

export function answerMark({ topic, text, learned }: MarkJob): MarkAnswer {
  try {
    return { ok: true, report: mark(topic, text, learned ? { learned } : {}) }
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error)
    return { ok: false, fault: `The marker could not read this topic (${said}).` }
  }
}
