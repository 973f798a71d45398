/** A pupil's checks -> topics × dates. */
import { sessionsOf, type Day, type Recall, type Session } from '../recall'
import { byTopic } from './summary'
import type { PupilCheck } from './types'

export interface TopicRow {
  readonly key: string
  readonly title: string
  /** Oldest first. */
  readonly sessions: readonly Session[]
  /** One for each day of the grid; `undefined` where there was no session. */
  readonly cells: readonly (Recall | undefined)[]
}

export interface TopicGrid {
  /** Days of any session, oldest first. */
  readonly days: readonly Day[]
  readonly rows: readonly TopicRow[]
}

export function topicGrid(checks: readonly PupilCheck[]): TopicGrid {
  const topics = [...byTopic(checks)].map(([key, own]) => ({
    key,
    title: own.at(-1)?.check.topicTitle ?? '',
    sessions: sessionsOf(own.map(({ check }) => check)),
  }))
  const days = [...new Set(topics.flatMap(({ sessions }) => sessions.map(({ day }) => day)))].sort()
  const rows = topics.map((topic) => {
    const on = new Map(topic.sessions.map(({ day, recall }) => [day, recall]))
    return { ...topic, cells: days.map((day) => on.get(day)) }
  })
  return { days, rows }
}
