import type { Topic } from '../syllabus/types'
import { readPage } from './1-statements/page'
import { readyTopic } from './2-ideas/ready'
import { judge, openCase } from './3-outcomes/judge'
import { pointEvidence } from './3-outcomes/sureness'

/** What the sureness of each drafted point is made of, in the points' order: what the calibration learns from. */
export function evidenceOf(topic: Topic, dump: string): readonly (readonly number[])[] {
  const ready = readyTopic(topic)
  const open = openCase(readPage(dump, ready.vocabulary), ready)
  return ready.points.map((_, index) => {
    const { cover, clash } = judge(open, index)
    return pointEvidence(open, index, { cover, clashes: clash !== undefined })
  })
}
