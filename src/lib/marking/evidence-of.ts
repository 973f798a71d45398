import type { Topic } from '../syllabus/types'
import type { Outcome } from './types'
import { readPage } from './1-statements/page'
import { readyTopic } from './2-ideas/ready'
import { judgeByRule, openCase } from './3-outcomes/judge'
import { isWeighed, nearlySaid, weighedEvidence } from './3-outcomes/verdict'
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

/** A point on a page as the rules judge it, with what is weighed where they leave it to that. */
export interface WeighedCase {
  readonly ref: string
  readonly drafted: boolean
  readonly outcome: Outcome
  /** Undefined where nothing is weighed: steps, equations, lists, and what clashes. */
  readonly evidence?: readonly number[]
  /** See `nearlySaid`. */
  readonly nearly: boolean
}

/** What the calibration of weighed points learns from, in the points' order. */
export function weighedCases(topic: Topic, dump: string): readonly WeighedCase[] {
  const ready = readyTopic(topic)
  const open = openCase(readPage(dump, ready.vocabulary), ready)
  return ready.points.map(({ point, drafted }, index) => {
    const ruled = judgeByRule(open, index)
    return {
      ref: point.ref,
      drafted,
      outcome: ruled.outcome,
      nearly: nearlySaid(ruled),
      ...(isWeighed(open, index, ruled) ? { evidence: weighedEvidence(open, index, ruled) } : {}),
    }
  })
}
