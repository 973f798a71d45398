/** Two copies of one record -> one that loses nothing of either. Pure. */
import type { Check, MarkChange, PaperEntry, Settings, TopicRating } from '../recall'
import { sameJson } from './aside'
import type { Kind } from './keys'
import type { RecordOf } from './records'
import type { Draft, KeptSyllabus, SyllabusEdit } from './types'

type Merge<T> = (here: T, there: T) => T

/** `here` is kept on this device, `there` comes from the backup. Merging the same backup twice changes nothing more. */
export const MERGE: { readonly [K in Kind]: Merge<RecordOf[K]> } = {
  check: (here, there) => {
    const edited = here.edited ?? there.edited
    const changes = uniteChanges(here.changes, there.changes)
    return { ...here, changes, ...(edited ? { edited } : {}) }
  },
  // A page never changes once it is marked, so two that differ are not told apart by time.
  page: (here) => here,
  draft: joinDrafts,
  syllabus: laterSyllabus,
  paper: (here) => here,
  settings: mergeSettings,
  edit: laterEdit,
  entry: laterEntry,
  round: (here, there) => (there.savedAtMs > here.savedAtMs ? there : here),
  learned: (here, there) => (there.atMs > here.atMs ? there : here),
  sender: (here) => here,
  remarks: (here, there) => (there.madeAtMs > here.madeAtMs ? there : here),
  pupil: (here, there) => (there.madeAtMs > here.madeAtMs ? there : here),
  'pupil-checks': (here, there) => (there.madeAtMs > here.madeAtMs ? there : here),
  'pupil-file': (here, there) => (there.madeAtMs > here.madeAtMs ? there : here),
  review: (here, there) => (there.savedAtMs > here.savedAtMs ? there : here),
  'tutor-notes': (here, there) => (there.savedAtMs > here.savedAtMs ? there : here),
  import: (here, there) => (there.savedAtMs > here.savedAtMs ? there : here),
}

/**
 * All changes of both. What both began with stays in front; after it come the rest by time, the order of each kept: a
 * clock may have been set back, so they are merged and not sorted.
 */
export function uniteChanges(here: Check['changes'], there: Check['changes']): MarkChange[] {
  let common = 0
  while (common < here.length && sameJson(here[common], there[common])) common += 1
  const united = here.slice(0, common)
  const mine = here.slice(common)
  const theirs = there.slice(common).filter((one) => !here.some((kept) => sameJson(kept, one)))
  for (const change of theirs) {
    while (mine[0] && mine[0].atMs <= change.atMs) united.push(...mine.splice(0, 1))
    united.push(change)
  }
  return [...united, ...mine]
}

/** The later draft, with the text of both where neither holds the other's, whichever of the two is here. */
export function joinDrafts(here: Draft, there: Draft): Draft {
  const hereFirst =
    here.savedAtMs === there.savedAtMs ? here.text < there.text : here.savedAtMs < there.savedAtMs
  const [older, later] = hereFirst ? [here, there] : [there, here]
  if (later.text.includes(older.text)) return later
  if (older.text.includes(later.text)) return { ...later, text: older.text }
  return { ...later, text: `${older.text}\n\n${later.text}` }
}

function laterSyllabus(here: KeptSyllabus, there: KeptSyllabus): KeptSyllabus {
  return there.addedAtMs > here.addedAtMs ? there : here
}

function laterEdit(here: SyllabusEdit, there: SyllabusEdit): SyllabusEdit {
  return there.savedAtMs > here.savedAtMs ? there : here
}

function laterEntry(here: PaperEntry, there: PaperEntry): PaperEntry {
  return there.savedAtMs > here.savedAtMs ? there : here
}

/** This device's own settings, with the exams, ratings and syllabi that only the backup has, and what is not set here. */
function mergeSettings(here: Settings, there: Settings): Settings {
  const newExams = there.exams.filter((exam) => !here.exams.some((mine) => sameJson(mine, exam)))
  const newRatings = there.ratings.filter((r) => !here.ratings.some((mine) => sameTopic(mine, r)))
  const taken =
    here.syllabusIds && there.syllabusIds
      ? [...new Set([...here.syllabusIds, ...there.syllabusIds])]
      : undefined
  return {
    ...there,
    ...here,
    ...(taken ? { syllabusIds: taken } : {}),
    exams: [...here.exams, ...newExams],
    ratings: [...here.ratings, ...newRatings],
  }
}

const sameTopic = (a: TopicRating, b: TopicRating): boolean =>
  a.syllabusId === b.syllabusId && a.topicId === b.topicId
