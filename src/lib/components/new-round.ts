/** What a drill or the night before is begun from -> a round; a round that is over -> the gap checks that are kept of it. */
import { startPile, type Check, type Round, type RoundPoint } from '$lib/recall'
import type { Report, Span } from '$lib/marking'
import type { Page } from '$lib/store'
import type { Topic } from '$lib/syllabus'
import { countWords } from '$lib/view/writing'
import { newId } from './new-check'
import { readNow } from './now'

export interface Asked {
  readonly topicId: string
  readonly ref: string
  readonly why?: string
}

export interface Begun {
  readonly id: string
  readonly kind: Round['kind']
  readonly syllabusId: string
  readonly title: string
  /** Those that the points are in; their other points are left behind. */
  readonly topics: readonly Topic[]
  readonly asked: readonly Asked[]
  /** The order is the list's own; else it is mixed. */
  readonly inOrder?: boolean
  readonly budgetMs?: number
  readonly leftOut?: number
}

const keyOf = ({ topicId, ref }: Asked) => JSON.stringify([topicId, ref])

/** Points that a topic no longer has are left out; a round of no points is over at once. */
export function newRound(begun: Begun): Round {
  const { id, kind, syllabusId, title, asked, inOrder, budgetMs, leftOut } = begun
  const topics = begun.topics
    .map((topic) => ({
      ...topic,
      points: topic.points.filter(({ ref }) =>
        asked.some((one) => one.topicId === topic.id && one.ref === ref),
      ),
    }))
    .filter(({ points }) => points.length > 0)
  const points = asked
    .filter(({ topicId, ref }) =>
      topics.some((topic) => topic.id === topicId && topic.points.some((one) => one.ref === ref)),
    )
    .map((one): RoundPoint => ({ ...one, key: keyOf(one), tries: 0, spentMs: 0 }))
  const keys = points.map(({ key }) => key)
  const { nowMs } = readNow()
  return {
    schema: 1,
    id,
    uid: newId(),
    kind,
    syllabusId,
    title,
    topics,
    points,
    pile: inOrder ? keys : startPile(keys, Math.random),
    stage: points.length === 0 ? 'over' : 'writing',
    typing: [''],
    startedAtMs: nowMs,
    savedAtMs: nowMs,
    spentMs: 0,
    ...(budgetMs === undefined ? {} : { budgetMs }),
    ...(leftOut === undefined ? {} : { leftOut }),
  }
}

/** The topic with the one point alone: it is marked as if nothing else were asked. */
export function topicOfPoint(round: Round, { topicId, ref }: RoundPoint): Topic | undefined {
  const topic = round.topics.find(({ id }) => id === topicId)
  return topic && { ...topic, points: topic.points.filter((point) => point.ref === ref) }
}

/** One gap check for each topic of which a point was written: the last that was written of each point, and its mark. */
export function gapChecks(round: Round): { check: Check; page: Page }[] {
  const { nowMs, zone } = readNow()
  return round.topics.flatMap((topic, i) => {
    const seen = round.points.filter(
      (point) => point.topicId === topic.id && point.last !== undefined,
    )
    const inOrder = topic.points.flatMap(({ ref }) => seen.filter((point) => point.ref === ref))
    if (inOrder.length === 0) return []
    const id = `${round.uid}-${i + 1}`
    const text = inOrder.map(({ last }) => last!.text).join('\n\n')
    const report = joined(inOrder)
    const written = {
      ...topic,
      points: topic.points.filter(({ ref }) => seen.some((one) => one.ref === ref)),
    }
    const check: Check = {
      schema: 1,
      id,
      kind: 'gap',
      syllabusId: round.syllabusId,
      topicId: topic.id,
      topicTitle: topic.title,
      atMs: nowMs,
      zone,
      marks: report.points.map(({ ref, outcome }) => ({ ref, outcome })),
      changes: inOrder.flatMap(({ ref, last }) =>
        last!.changed ? [{ ref, outcome: last!.changed, by: 'student', atMs: last!.atMs }] : [],
      ),
      marker: report.marker,
      writingMs: seen.reduce((sum, point) => sum + point.spentMs, 0),
      words: countWords(text),
      pastes: [],
    }
    return [{ check, page: { schema: 1, id, text, topic: written, report } }]
  })
}

/** The reports of the points, each moved to where its text stands among the others. */
function joined(points: readonly RoundPoint[]): Report {
  let at = 0
  const reports = points.map(({ last }) => {
    const moved = movedBy(last!.report, at)
    at += last!.text.length + 2
    return moved
  })
  return {
    marker: reports.at(-1)!.marker,
    topic: reports[0]!.topic,
    points: reports.flatMap((report) => report.points),
    statements: reports.flatMap(({ statements }) => statements),
    beyond: reports.flatMap(({ beyond }) => beyond),
  }
}

function movedBy(report: Report, by: number): Report {
  const move = ({ start, end }: Span): Span => ({ start: start + by, end: end + by })
  return {
    ...report,
    statements: report.statements.map(move),
    beyond: report.beyond.map(move),
    points: report.points.map((point) => ({
      ...point,
      ideas: point.ideas.map((idea) => ({ ...idea, spans: idea.spans.map(move) })),
      ...(point.nearest ? { nearest: move(point.nearest) } : {}),
      ...(point.clash
        ? {
            clash: {
              ...point.clash,
              statement: move(point.clash.statement),
              words: move(point.clash.words),
            },
          }
        : {}),
    })),
  }
}
