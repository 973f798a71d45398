import { stringify } from 'yaml'
import { readSyllabus, type Topic } from '../../../src/lib/syllabus'
import type { PointSource, RuleExample } from './rules/example'

/** A topic as a teacher's file would bring it: written as YAML and read, so that the notation is parsed. */
export function topicFrom(title: string, points: readonly PointSource[]): Topic {
  const numbered = points.map((point, i) => ({ ...point, ref: point.ref ?? String(i + 1) }))
  const source = stringify({ format: 1, title: 'Rules', topics: [{ title, points: numbered }] })
  const read = readSyllabus(source)
  if (!read.ok)
    throw new Error(`${read.mistakes[0]!.where}: ${read.mistakes[0]!.message}\n${source}`)
  return read.syllabus.topics[0]!
}

/** The example's point first, then its neighbours. */
export function topicOf({
  subject,
  title,
  point,
  others = [],
}: Pick<RuleExample, 'subject' | 'title' | 'point' | 'others'>): Topic {
  return topicFrom(title ?? `${subject} topic`, [point, ...others])
}
