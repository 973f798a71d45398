/** Two copies of one record -> one that loses nothing of either. Pure. */
import type { Check, Exam, MarkChange, Settings, TopicRating } from '../recall'
import { sameJson } from './aside'
import type { Kind } from './keys'
import type { RecordOf } from './records'
import type { Draft, KeptSyllabus } from './types'

type Merge<T> = (here: T, there: T) => T

/** `here` is kept on this device, `there` comes from the backup. Merging the same backup twice changes nothing more. */
export const MERGE: { readonly [K in Kind]: Merge<RecordOf[K]> } = {
  check: (here, there) => ({ ...here, changes: uniteChanges(here.changes, there.changes) }),
  // A page never changes once it is marked, so two that differ are not told apart by time.
  page: (here) => here,
  draft: mergeDrafts,
  syllabus: laterSyllabus,
  paper: (here) => here,
  settings: mergeSettings,
}

/**
 * All changes of both, each once. What both began with stays in front; after it they are merged by time, and the
 * order of each is kept.
 */
export function uniteChanges(here: Check['changes'], there: Check['changes']): MarkChange[] {
  let common = 0
  while (common < here.length && sameJson(here[common], there[common])) common += 1
  const united = here.slice(0, common)
  const [mine, theirs] = [here.slice(common), there.slice(common)]
  while (mine.length > 0 || theirs.length > 0) {
    const next = takesFirst(mine[0], theirs[0]) ? mine.shift() : theirs.shift()
    if (next && !united.slice(common).some((change) => sameJson(change, next))) united.push(next)
  }
  return united
}

const takesFirst = (mine: MarkChange | undefined, theirs: MarkChange | undefined): boolean =>
  mine !== undefined && (theirs === undefined || mine.atMs <= theirs.atMs)

/** The later draft, with the text of both where neither holds the other's. */
function mergeDrafts(here: Draft, there: Draft): Draft {
  const [older, later] = here.savedAtMs < there.savedAtMs ? [here, there] : [there, here]
  if (later.text.includes(older.text)) return later
  if (older.text.includes(later.text)) return { ...later, text: older.text }
  return { ...later, text: `${older.text}\n\n${later.text}` }
}

const laterSyllabus = (here: KeptSyllabus, there: KeptSyllabus): KeptSyllabus =>
  there.addedAtMs > here.addedAtMs ? there : here

/** This device's own settings, with the exams and ratings that only the backup has. */
function mergeSettings(here: Settings, there: Settings): Settings {
  const newExams = there.exams.filter((exam) => !here.exams.some((mine) => sameExam(mine, exam)))
  const newRatings = there.ratings.filter((r) => !here.ratings.some((mine) => sameTopic(mine, r)))
  return {
    ...here,
    exams: [...here.exams, ...newExams],
    ratings: [...here.ratings, ...newRatings],
  }
}

const sameExam = (a: Exam, b: Exam): boolean => sameJson(a, b)

const sameTopic = (a: TopicRating, b: TopicRating): boolean =>
  a.syllabusId === b.syllabusId && a.topicId === b.topicId
