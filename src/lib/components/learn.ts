/** What points learn from the marks that the student and the tutor change, and what of it the marker is told. */
import type { Learned, MarkedWording, Outcome, Report } from '$lib/marking'
import type { Check } from '$lib/recall'
import {
  forgetWording,
  getPage,
  getSettings,
  keepWording,
  latestWords,
  listLearned,
  withdrawWording,
  type LearnedWording,
  type Lesson,
  type Returning,
} from '$lib/store'
import type { Topic } from '$lib/syllabus'
import { overruled, wordingCounts, wordingOf } from '$lib/view/learned'
import { markInWorker, openMarker, type OpenMarker } from './marker'
import { readNow } from './now'

/**
 * What the points of a topic learnt, as the marker takes it: of a point whose text was changed since, nothing. `undefined` where
 * there is none, where points are not to learn, and where it cannot be read: the page is then marked by the syllabus alone.
 */
export async function learnedOf(syllabusId: string, topic: Topic): Promise<Learned | undefined> {
  try {
    const settings = await getSettings()
    const wordings = await listLearned({ syllabusId, topicId: topic.id })
    return asLearned(
      wordings.filter((one) => wordingCounts(one, settings)),
      topic,
    )
  } catch {
    return undefined
  }
}

function asLearned(wordings: readonly LearnedWording[], topic: Topic): Learned | undefined {
  const learned = new Map<string, MarkedWording[]>()
  for (const wording of latestWords(wordings)) {
    const { text, credited } = wording
    const ref = pointOf(topic, wording)?.ref
    if (ref !== undefined) learned.set(ref, [...(learned.get(ref) ?? []), { text, credited }])
  }
  return learned.size > 0 ? Object.fromEntries(learned) : undefined
}

/** A point that only its number changed is still the one that learnt. */
const pointOf = ({ points }: Topic, { ref, pointText }: LearnedWording) =>
  points.find((point) => point.ref === ref && point.text === pointText) ??
  points.find(({ text }) => text === pointText)

/** A page as it was marked, and the topic as it stood then. */
interface Marked {
  readonly text: string
  readonly report: Report
  readonly topic: Topic
}

/** Who changed the mark, and on the tutor's side whose check it is. */
type Whose = Pick<LearnedWording, 'by' | 'pupilId'>

/** What the point is to learn from somebody's mark, in place of what it learnt from that mark before. Nothing is kept yet. */
export async function lessonOf(
  check: Check,
  page: Marked,
  ref: string,
  outcome: Outcome | null,
  whose: Whose = { by: 'student' },
): Promise<Lesson> {
  const { syllabusId, topicId } = check
  const at = { syllabusId, topicId, ref, checkId: check.id, ...whose }
  const point = page.topic.points.find((one) => one.ref === ref)
  const theirs = (await listLearned(check)).find(
    (one) => one.checkId === check.id && one.ref === ref && one.by !== whose.by,
  )
  const wording = wordingOf(page, ref, outcome) ?? overruled(theirs, outcome)
  if (!wording || !point || (await getSettings()).learnsFromChanges === false)
    return { at, wording: undefined }
  const atMs = readNow().nowMs
  return { at, wording: { schema: 1, ...at, ...wording, atMs, pointText: point.text } }
}

/**
 * A lesson that is kept stays only if the marker, told of it, gives the same answer: a statement that says the opposite, or is in
 * doubt, would not count the next time either. Gives what stays. Rejects with a plain message.
 */
export async function provedLesson(
  { wording }: Lesson,
  page: Marked,
  mark: OpenMarker['mark'] = (...job) => markInWorker(...job).promise,
): Promise<LearnedWording | undefined> {
  if (!wording || (await recognised(page, wording, mark))) return wording
  await withdrawWording(wording)
  return undefined
}

/** Keeps what the point learns from somebody's mark that is kept already; gives it, or `undefined` where there is nothing to learn. */
export async function learnFrom(
  check: Check,
  page: Marked,
  ref: string,
  outcome: Outcome | null,
  whose?: Whose,
  mark?: OpenMarker['mark'],
): Promise<LearnedWording | undefined> {
  const lesson = await lessonOf(check, page, ref, outcome, whose)
  if (lesson.wording) await keepWording(lesson.wording)
  else await forgetWording(lesson.at)
  return provedLesson(lesson, page, mark)
}

async function recognised(
  page: Marked,
  made: LearnedWording,
  mark: OpenMarker['mark'],
): Promise<boolean> {
  try {
    const learned = asLearned(await listLearned(made), page.topic)
    const report = await mark(page.topic, page.text, learned)
    const now = report.points.find(({ ref }) => ref === made.ref)
    return now !== undefined && (now.outcome === 'full') === made.credited
  } catch {
    return false
  }
}

/** On the pupil's side: points learn from the marks that came with a tutor's file. Gives how many wordings; rejects with a plain message. */
export async function learnFromTutor(changed: readonly Returning[]): Promise<number> {
  const marker = openMarker()
  let learnt = 0
  try {
    for (const { check, changes } of changed) {
      const page = await getPage(check.id)
      for (const { ref, outcome } of page ? changes : [])
        if (await learnFrom(check, page!, ref, outcome, { by: 'tutor' }, marker.mark)) learnt += 1
    }
  } finally {
    marker.stop()
  }
  return learnt
}

/** What the points learnt from one check, by ref: the latest word on each. */
export async function learntFromCheck(check: Check): Promise<ReadonlyMap<string, LearnedWording>> {
  const own = (await listLearned(check)).filter(({ checkId }) => checkId === check.id)
  return new Map(own.map((one) => [one.ref, one]))
}
