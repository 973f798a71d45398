/** A syllabus that was read -> a draft, to be changed before it is kept. */
import type { Syllabus } from '../types'
import type { DraftLine, DraftTree } from './types'

export function syllabusTree({ title, note, topics }: Syllabus): DraftTree {
  const lines = topics.flatMap(({ title: text, caution, points }): Omit<DraftLine, 'key'>[] => [
    { role: 'topic', ref: '', text, depth: 1, ...(caution === undefined ? {} : { caution }) },
    ...points.map(({ ref, text: said, ...more }) => ({
      role: 'point' as const,
      ref,
      text: said,
      more,
    })),
  ])
  return {
    title,
    ...(note === undefined ? {} : { note }),
    lines: lines.map((line, key) => ({ ...line, key })),
    warnings: [],
  }
}
