/** One topic -> what its author should know of it. A fault is a value: what a worker throws arrives without its kind. */
import { mark } from '../lib/marking'
import type { Topic } from '../lib/syllabus'
import { examineTopic, type Examined } from '../lib/view/findings'

export type ExamineAnswer =
  | { readonly ok: true; readonly examined: Examined }
  | { readonly ok: false; readonly fault: string }

export function answerExamine(topic: Topic): ExamineAnswer {
  try {
    return { ok: true, examined: examineTopic(topic, mark) }
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error)
    return { ok: false, fault: `This topic could not be looked through (${said}).` }
  }
}
