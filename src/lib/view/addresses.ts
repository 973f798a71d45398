/** The addresses of the app's pages, without the base path. */
import type { TopicPlace } from '../recall'

export const checkHref = ({ syllabusId, topicId }: TopicPlace): string =>
  `/check?syllabus=${encodeURIComponent(syllabusId)}&topic=${encodeURIComponent(topicId)}`

export const topicHref = ({ syllabusId, topicId }: TopicPlace): string =>
  `/topic?syllabus=${encodeURIComponent(syllabusId)}&topic=${encodeURIComponent(topicId)}`

export const markedHref = (checkId: string): string =>
  `/marked?check=${encodeURIComponent(checkId)}`

export const syllabusHref = (syllabusId: string): string =>
  `/syllabus?syllabus=${encodeURIComponent(syllabusId)}`

export const editHref = (syllabusId: string): string =>
  `/edit?syllabus=${encodeURIComponent(syllabusId)}`

/** The gaps of one check, or of a topic as they stand now. */
export const drillHref = (of: { readonly check: string } | TopicPlace): string =>
  `/drill?${query(of)}`

/** Chosen points of one syllabus. */
export const drillOfPointsHref = (syllabusId: string, points: readonly PointPlace[]): string =>
  `/drill?syllabus=${encodeURIComponent(syllabusId)}&points=${encodeURIComponent(pointList(points))}`

/** The night before. */
export const TONIGHT_HREF = '/tonight'

/** What is missing, on one page for the wall: of one check, or of a topic. */
export const sheetHref = (of: { readonly check: string } | TopicPlace): string =>
  `/sheet?${query(of)}`

/** Points for the wall out of several topics of one syllabus: tonight's list. */
export const sheetOfPointsHref = (syllabusId: string, points: readonly PointPlace[]): string =>
  `/sheet?syllabus=${encodeURIComponent(syllabusId)}&points=${encodeURIComponent(pointList(points))}`

/** A point by its topic and its ref. */
export interface PointPlace {
  readonly topicId: string
  readonly ref: string
}

/** `topic:ref,topic:ref`; a colon or a comma of a ref's own is escaped. */
export const pointList = (points: readonly PointPlace[]): string =>
  points
    .map(({ topicId, ref }) => `${encodeURIComponent(topicId)}:${encodeURIComponent(ref)}`)
    .join(',')

/** The points of a list, each once, in its order. What is no point is left out: an address may be cut short. */
export function readPointList(list: string): PointPlace[] {
  const places = list.split(',').flatMap((written) => {
    const [topicId = '', ref = '', ...more] = written.split(':').map(decoded)
    return topicId && ref && more.length === 0 ? [{ topicId, ref }] : []
  })
  return [...new Map(places.map((place) => [pointList([place]), place])).values()]
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return ''
  }
}

/** Marks on exam questions of a topic. */
export const papersHref = (place: TopicPlace): string => `/papers?${query(place)}`

/** One pupil, on the tutor's side. */
export const pupilHref = (pupilId: string): string => `/pupil?pupil=${encodeURIComponent(pupilId)}`

/** A pupil's check for the tutor to mark. */
export const moderateHref = (pupilId: string, checkId: string): string =>
  `/moderate?pupil=${encodeURIComponent(pupilId)}&check=${encodeURIComponent(checkId)}`

/** Where exam dates are set. */
export const EXAMS_HREF = '/settings#exams'

const query = (of: { readonly check: string } | TopicPlace): string =>
  'check' in of
    ? `check=${encodeURIComponent(of.check)}`
    : `syllabus=${encodeURIComponent(of.syllabusId)}&topic=${encodeURIComponent(of.topicId)}`
