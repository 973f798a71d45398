/** All pupils -> the rows of the group page, and the points most missed across them. */
import { daysBetween, type Day } from '../recall'
import { topicKey } from './choose'
import type { Pupil, TopicSummary } from './types'

export interface GroupCell {
  readonly full: number
  readonly points: number
  readonly run: number
  readonly daysSince: number
  /** Points full at the session before, out of how many; absent where there was none. */
  readonly before?: { readonly full: number; readonly points: number }
  readonly trend: 'up' | 'down' | 'same' | 'first'
}

export interface GroupRow {
  readonly id: string
  readonly name: string
  /** Over the latest session of each topic. */
  readonly full: number
  readonly points: number
  /** Since their latest session; absent where there is none. */
  readonly daysSince?: number
  readonly madeAtMs: number
  /** By column; `undefined` where this pupil has no check of the topic. */
  readonly cells: readonly (GroupCell | undefined)[]
}

export interface GroupColumn {
  readonly key: string
  readonly title: string
}

export interface Group {
  readonly columns: readonly GroupColumn[]
  readonly rows: readonly GroupRow[]
}

/**
 * Who needs help first: the lowest share of points full over the latest session of each topic; of equals, who has not
 * checked for longest. A pupil without any session comes first. Columns keep the order in which topics come up.
 */
export function groupOf(pupils: readonly Pupil[], today: Day): Group {
  const columns = new Map<string, GroupColumn>()
  for (const { topics } of pupils)
    for (const topic of topics) {
      const key = topicKey(topic)
      if (!columns.has(key)) columns.set(key, { key, title: topic.title })
    }
  const rows = pupils.map((pupil) => rowOf(pupil, [...columns.keys()], today))
  return { columns: [...columns.values()], rows: rows.sort(needFirst) }
}

function rowOf(pupil: Pupil, keys: readonly string[], today: Day): GroupRow {
  const cells = new Map(pupil.topics.map((topic) => [topicKey(topic), cellOf(topic, today)]))
  const all = [...cells.values()].filter((cell) => cell !== undefined)
  const sum = (count: (cell: GroupCell) => number) =>
    all.reduce((total, cell) => total + count(cell), 0)
  return {
    id: pupil.id,
    name: pupil.name,
    full: sum(({ full }) => full),
    points: sum(({ points }) => points),
    ...(all.length > 0 ? { daysSince: Math.min(...all.map((cell) => cell.daysSince)) } : {}),
    madeAtMs: pupil.madeAtMs,
    cells: keys.map((key) => cells.get(key)),
  }
}

function cellOf({ sessions, run }: TopicSummary, today: Day): GroupCell | undefined {
  const latest = sessions.at(-1)
  if (!latest) return undefined
  const before = sessions.at(-2)
  const { full, points } = latest
  return {
    full,
    points,
    run,
    daysSince: daysBetween(latest.day, today),
    ...(before ? { before: { full: before.full, points: before.points } } : {}),
    trend: before ? trendOf(share(latest) - share(before)) : 'first',
  }
}

const trendOf = (change: number): GroupCell['trend'] =>
  change > 0 ? 'up' : change < 0 ? 'down' : 'same'

const share = ({ full, points }: { full: number; points: number }): number =>
  points === 0 ? 0 : full / points

const needFirst = (a: GroupRow, b: GroupRow): number =>
  (a.points === 0 ? -1 : share(a)) - (b.points === 0 ? -1 : share(b)) ||
  (b.daysSince ?? 0) - (a.daysSince ?? 0) ||
  a.name.localeCompare(b.name, 'en')

export interface MissedPoint {
  readonly key: string
  readonly title: string
  readonly ref: string
  readonly text: string
  /** Pupils whose latest session did not have it in full, of those whose latest session had the topic. */
  readonly names: readonly string[]
  readonly of: number
}

/** Points not full at the latest session of two or more pupils: the most pupils first, then the syllabus's order. */
export function mostMissed(pupils: readonly Pupil[]): MissedPoint[] {
  const points = new Map<string, { point: Omit<MissedPoint, 'names' | 'of'>; names: string[] }>()
  const checked = new Map<string, number>()
  for (const { name, topics } of pupils)
    for (const topic of topics) {
      const key = topicKey(topic)
      checked.set(key, (checked.get(key) ?? 0) + 1)
      for (const { ref, text } of topic.gaps) {
        const at = JSON.stringify([key, ref])
        const there = points.get(at)
        if (there) there.names.push(name)
        else points.set(at, { point: { key, title: topic.title, ref, text }, names: [name] })
      }
    }
  return [...points.values()]
    .filter(({ names }) => names.length > 1)
    .map(({ point, names }) => ({ ...point, names, of: checked.get(point.key) ?? 0 }))
    .sort((a, b) => b.names.length - a.names.length)
}
