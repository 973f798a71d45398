/** Which records are the demo's. They carry a prefix, so that they are never taken for the user's own. */
import type { Settings } from './settings'

/** The colon keeps it apart: an id that is made from a title holds letters, figures and hyphens only. */
export const DEMO_PREFIX = 'demo:'

export const isDemoId = (id: string): boolean => id.startsWith(DEMO_PREFIX)

/** The settings without what the demo put there; the same object where there is nothing of it. */
export function withoutDemo(settings: Settings): Settings {
  const { exams, ratings, syllabusIds } = settings
  const own = ({ syllabusId }: { readonly syllabusId: string }) => !isDemoId(syllabusId)
  if (exams.every(own) && ratings.every(own) && !syllabusIds?.some(isDemoId)) return settings
  return {
    ...settings,
    exams: exams.filter(own),
    ratings: ratings.filter(own),
    ...(syllabusIds ? { syllabusIds: syllabusIds.filter((id) => !isDemoId(id)) } : {}),
  }
}
