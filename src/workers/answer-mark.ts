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

let last: { readonly topic: Topic; readonly written: string } | undefined

/** Every job brings a copy of its topic. For a pile of pages on one topic the first copy stands for all: what the marker makes of it is made once. */
function asMarkedBefore(topic: Topic): Topic {
  const written = JSON.stringify(topic)
  if (last?.written !== written) last = { topic, written }
  return last.topic
}

export function answerMark({ topic, text, learned }: MarkJob): MarkAnswer {
  try {
    return { ok: true, report: mark(asMarkedBefore(topic), text, learned ? { learned } : {}) }
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error)
    return { ok: false, fault: `The marker could not read this topic (${said}).` }
  }
}
