import type { Topic } from '../syllabus/types'
import type { Report } from './types'

export const MARKER = '1.0.0'

/** Marks one dump against one topic. Never throws on a student's words; any Unicode text will do. */
export function mark(topic: Topic, dump: string): Report {
  return {
    marker: MARKER,
    topic: topic.id,
    points: topic.points.map((point) => ({
      ref: point.ref,
      outcome: 'missed',
      ideas: [],
      drafted: false,
      offered: false,
      sureness: 0,
      why: 'Not said.',
    })),
    statements: dump === '' ? [] : [{ start: 0, end: dump.length }],
    beyond: [],
  }
}
