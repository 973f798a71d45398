/** An address -> the points that may stand on the sheet, and which of them do at first. */
import { findTopic } from '../library'
import { lastMarked } from '../last-marked'
import type { Outcome } from '$lib/marking'
import { dayOf, decidedOutcomes, pointHistories, recallOf, type Check } from '$lib/recall'
import { getCheck, getPage, listChecks, listPapers, type Page } from '$lib/store'
import type { Topic } from '$lib/syllabus'
import { pointList, readPointList } from '$lib/view/addresses'
import { dayWords } from '$lib/view/dates'
import { scoreLine } from '$lib/view/sentences'
import type { SheetGroup } from '$lib/view/sheet-points'
import { counted } from '$lib/view/words'

export interface OpenedSheet {
  readonly syllabusId: string
  readonly heading: string
  readonly sub: string
  readonly groups: readonly SheetGroup[]
  /** Keys of the points that are on it at first. */
  readonly chosen: ReadonlySet<string>
  /** Points that the address names and no topic has any more. */
  readonly gone: number
  /** What could not be read; the sheet is made of the rest. */
  readonly fault: string
}

type Query = Pick<URLSearchParams, 'get'>

/** `undefined` where the address names nothing that is here. Rejects with a plain message where it cannot be read. */
export async function openSheet(query: Query): Promise<OpenedSheet | undefined> {
  const check = query.get('check')
  const syllabusId = query.get('syllabus')
  const topicId = query.get('topic')
  const listed = query.get('points')
  const points = listed === null ? undefined : readPointList(listed)
  const opened = check
    ? await ofCheck(check)
    : syllabusId && topicId
      ? await ofTopics(syllabusId, [topicId])
      : syllabusId && points
        ? await ofTopics(syllabusId, [...new Set(points.map((point) => point.topicId))])
        : undefined
  if (!opened || !points) return opened
  const wanted = new Set(points.map((point) => pointList([point])))
  // Tonight's list is a choice of its own: the rest of its topics is not offered.
  const groups =
    check || topicId
      ? opened.groups
      : opened.groups.map((group) => ({
          ...group,
          points: group.points.filter(({ key }) => wanted.has(key)),
        }))
  const here = new Set(groups.flatMap((group) => group.points.map(({ key }) => key)))
  const chosen = new Set([...wanted].filter((key) => here.has(key)))
  return {
    ...opened,
    groups: groups.filter((group) => group.points.length > 0),
    chosen,
    gone: wanted.size - chosen.size,
    ...(check || topicId ? {} : { sub: counted(chosen.size, 'point') }),
  }
}

async function ofCheck(id: string): Promise<OpenedSheet | undefined> {
  const marked = await keptOrLast(id)
  if (!marked) return undefined
  const { check, page } = marked
  const outcomes = new Map(decidedOutcomes(check).map(({ ref, outcome }) => [ref, outcome]))
  return {
    ...sheetOf(check.topicTitle, `${dayWords(dayOf(check))}. ${scoreLine(recallOf(check))}`, [
      groupOf(check.topicId, page.topic, outcomes),
    ]),
    syllabusId: check.syllabusId,
  }
}

/** A check that this browser would not keep is there until its window is closed. */
async function keptOrLast(id: string): Promise<{ check: Check; page: Page } | undefined> {
  const last = lastMarked.current
  try {
    const [check, page] = await Promise.all([getCheck(id), getPage(id)])
    if (check && page) return { check, page }
  } catch (error) {
    if (last?.check.id !== id) throw error
  }
  return last?.check.id === id ? last : undefined
}

async function ofTopics(
  syllabusId: string,
  topicIds: readonly string[],
): Promise<OpenedSheet | undefined> {
  const { checks, papers, fault } = await history()
  const groups: SheetGroup[] = []
  let syllabusTitle = ''
  let seen = false
  for (const topicId of topicIds) {
    const found = await findTopic(syllabusId, topicId)
    if (!found) continue
    syllabusTitle = found.syllabus.title
    const here = (one: { syllabusId: string; topicId: string }) =>
      one.syllabusId === syllabusId && one.topicId === topicId
    const histories = pointHistories(checks.filter(here), papers.filter(here))
    const latest = [...histories].flatMap(([ref, history]): [string, Outcome][] => {
      const last = history.at(-1)
      return last ? [[ref, last.outcome]] : []
    })
    seen ||= latest.length > 0
    groups.push(groupOf(topicId, found.topic, new Map(latest)))
  }
  const [first] = groups
  if (!first) return undefined
  const alone = groups.length === 1
  return {
    ...sheetOf(
      alone ? first.title : syllabusTitle,
      seen ? `${syllabusTitle}. As it stands now.` : `${syllabusTitle}. Not checked yet.`,
      groups,
    ),
    syllabusId,
    fault,
  }
}

/** A history that cannot be read does not keep a topic from the wall. */
async function history() {
  try {
    const [{ checks }, { papers }] = await Promise.all([listChecks(), listPapers()])
    return { checks, papers, fault: '' }
  } catch (error) {
    return { checks: [], papers: [], fault: error instanceof Error ? error.message : String(error) }
  }
}

const groupOf = (
  topicId: string,
  topic: Topic,
  outcomes: ReadonlyMap<string, Outcome>,
): SheetGroup => ({
  topicId,
  title: topic.title,
  ...(topic.caution === undefined ? {} : { caution: topic.caution }),
  points: topic.points.map((point) => {
    const outcome = outcomes.get(point.ref)
    const key = pointList([{ topicId, ref: point.ref }])
    return { key, point, topicTitle: topic.title, ...(outcome === undefined ? {} : { outcome }) }
  }),
})

const sheetOf = (
  heading: string,
  sub: string,
  groups: readonly SheetGroup[],
): Omit<OpenedSheet, 'syllabusId'> => ({
  heading,
  sub,
  groups,
  chosen: new Set(
    groups.flatMap(({ points }) =>
      points.flatMap(({ key, outcome }) => (outcome && outcome !== 'full' ? [key] : [])),
    ),
  ),
  gone: 0,
  fault: '',
})
