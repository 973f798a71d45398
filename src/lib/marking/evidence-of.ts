import type { Topic } from '../syllabus/types'
import type { Outcome } from './types'
import { readPage } from './1-statements/page'
import { readyTopic } from './2-ideas/ready'
import { byCover, judgeByRule, openCase } from './3-outcomes/judge'
import { weighedEvidence } from './3-outcomes/verdict'
import { pointEvidence } from './3-outcomes/sureness'

/** What the sureness of each drafted point is made of, in the points' order: what the calibration learns from. */
export function evidenceOf(topic: Topic, dump: string): readonly (readonly number[])[] {
  const ready = readyTopic(topic)
  const open = openCase(readPage(dump, ready.vocabulary), ready)
  return ready.points.map((_, index) => {
    const { cover, clash } = judgeByRule(open, index)
    return pointEvidence(open, index, { cover, clashes: clash !== undefined })
  })
}

/** A drafted point on a page as the rules judge it, with what is weighed where they leave it to that. */
export interface DraftedCase {
  readonly ref: string
  readonly outcome: Outcome
  /** Undefined where nothing is weighed: steps, equations, lists, and what clashes. */
  readonly evidence?: readonly number[]
}

/** What the calibration of drafted points learns from, in the points' order. */
export function draftedCases(topic: Topic, dump: string): readonly DraftedCase[] {
  const ready = readyTopic(topic)
  const open = openCase(readPage(dump, ready.vocabulary), ready)
  return ready.points.map((point, index) => {
    const ruled = judgeByRule(open, index)
    return {
      ref: point.point.ref,
      outcome: ruled.outcome,
      ...(byCover(point) && !ruled.clash ? { evidence: weighedEvidence(open, index, ruled) } : {}),
    }
  })
}
