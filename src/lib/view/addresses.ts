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
