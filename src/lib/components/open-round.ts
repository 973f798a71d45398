/** The address of a drill -> the points that it asks. */
import { countedCheck, defaultSettings, gapsOf, openGaps, type Round } from '$lib/recall'
import { getCheck, getPage, getSettings, listTopicChecks } from '$lib/store'
import { readPointList } from '$lib/view/addresses'
import { findSyllabus, findTopic } from './library'
import { newRound } from './new-round'

/** The drill of an address as it begins; a plain message where there is none. Rejects where what is kept cannot be read. */
export async function drillOf(query: URLSearchParams): Promise<Round | string> {
  const check = query.get('check')
  if (check !== null) return ofCheck(check)
  const syllabusId = query.get('syllabus') ?? ''
  const points = query.get('points')
  if (points !== null) return ofPoints(syllabusId, points)
  return ofTopic(syllabusId, query.get('topic') ?? '')
}

/** The same for every address that asks the same. */
export const drillId = (query: URLSearchParams): string =>
  `drill ${['check', 'syllabus', 'topic', 'points'].map((name) => query.get(name) ?? '').join(' ')}`

async function ofCheck(id: string): Promise<Round | string> {
  const [check, page] = await Promise.all([getCheck(id), getPage(id)])
  if (!check || !page) return 'There is no such check on this device.'
  const { syllabusId, topicId, topicTitle } = check
  const settings = await getSettings().catch(() => defaultSettings)
  // The points as they were marked: an edit since must not change what was missed.
  return newRound({
    id: drillId(new URLSearchParams({ check: id })),
    kind: 'drill',
    syllabusId,
    title: `${topicTitle}: the gaps`,
    topics: [{ ...page.topic, id: topicId }],
    asked: gapsOf(countedCheck(check, settings)).map((ref) => ({ topicId, ref })),
  })
}

async function ofTopic(syllabusId: string, topicId: string): Promise<Round | string> {
  const found = await findTopic(syllabusId, topicId)
  if (!found) return 'There is no such topic on this device.'
  const { checks } = await listTopicChecks({ syllabusId, topicId })
  return newRound({
    id: drillId(new URLSearchParams({ syllabus: syllabusId, topic: topicId })),
    kind: 'drill',
    syllabusId,
    title: `${found.topic.title}: the gaps`,
    topics: [found.topic],
    asked: openGaps(checks).map((ref) => ({ topicId, ref })),
  })
}

async function ofPoints(syllabusId: string, points: string): Promise<Round | string> {
  const syllabus = await findSyllabus(syllabusId)
  if (!syllabus) return 'There is no such syllabus on this device.'
  return newRound({
    id: drillId(new URLSearchParams({ syllabus: syllabusId, points })),
    kind: 'drill',
    syllabusId,
    title: `${syllabus.title}: chosen points`,
    topics: syllabus.topics,
    asked: readPointList(points),
  })
}
