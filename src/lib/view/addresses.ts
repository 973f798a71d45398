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

/** What is missing, on one page for the wall: of one check, or of a topic. */
export const sheetHref = (of: { readonly check: string } | TopicPlace): string =>
  `/sheet?${query(of)}`

/** Marks on exam questions of a topic. */
export const papersHref = (place: TopicPlace): string => `/papers?${query(place)}`

/** Where exam dates are set. */
export const EXAMS_HREF = '/settings#exams'

const query = (of: { readonly check: string } | TopicPlace): string =>
  'check' in of
    ? `check=${encodeURIComponent(of.check)}`
    : `syllabus=${encodeURIComponent(of.syllabusId)}&topic=${encodeURIComponent(of.topicId)}`
