import type { Topic } from '../syllabus/types'
import { readPage } from './1-statements/page'
import { readyTopic } from './2-ideas/ready'
import { openCase } from './3-outcomes/judge'
import { featuresOf } from './3-outcomes/sureness'
import { bestWindow } from './3-outcomes/window'

/** What calibration learns from: for each point of a topic the features of a page, undefined where nothing comes near the point. */
export function surenessFeatures(topic: Topic, dump: string): (number[] | undefined)[] {
  const ready = readyTopic(topic)
  const open = openCase(readPage(dump, ready.vocabulary), ready)
  return ready.points.map((point, index) =>
    featuresOf(open, index, point, bestWindow(open, index, open.claims[index]!)?.cover ?? 0),
  )
}
