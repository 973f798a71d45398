/** What points learn from the marks that the student changes, and what of it the marker is told. */
import type { Learned, MarkedWording, Outcome } from '$lib/marking'
import type { Check } from '$lib/recall'
import {
  forgetWording,
  getSettings,
  keepWording,
  listLearned,
  type LearnedWording,
  type Page,
} from '$lib/store'
import type { Topic } from '$lib/syllabus'
import { wordingOf } from '$lib/view/learned'
import { markInWorker } from './marker'
import { readNow } from './now'

/**
 * What the points of a topic learnt, as the marker takes it: of a point whose text was changed since, nothing. `undefined` where
 * there is none, where points are not to learn, and where it cannot be read: the page is then marked by the syllabus alone.
 */
export async function learnedOf(syllabusId: string, topic: Topic): Promise<Learned | undefined> {
  try {
    if ((await getSettings()).learnsFromChanges === false) return undefined
    const learned = new Map<string, MarkedWording[]>()
    for (const wording of await listLearned({ syllabusId, topicId: topic.id })) {
      const { text, credited } = wording
      const ref = pointOf(topic, wording)?.ref
      if (ref !== undefined) learned.set(ref, [...(learned.get(ref) ?? []), { text, credited }])
    }
    return learned.size > 0 ? Object.fromEntries(learned) : undefined
  } catch {
    return undefined
  }
}

/** A point that only its number changed is still the one that learnt. */
const pointOf = ({ points }: Topic, { ref, pointText }: LearnedWording) =>
  points.find((point) => point.ref === ref && point.text === pointText) ??
  points.find(({ text }) => text === pointText)

/**
 * Keeps what the point learns from the student's mark, in place of what it learnt from this check before; gives it, or
 * `undefined` where there is nothing to learn. It is kept only if the marker, told of it, gives the student's answer: a statement
 * that says the opposite, or is in doubt, would not count the next time either. Rejects with a plain message.
 */
export async function learnFrom(
  check: Check,
  page: Page,
  ref: string,
  outcome: Outcome | null,
): Promise<LearnedWording | undefined> {
  const wording = wordingOf(page, ref, outcome)
  const point = page.topic.points.find((one) => one.ref === ref)
  if (!wording || !point || (await getSettings()).learnsFromChanges === false) {
    await forgetWording(check, ref, check.id)
    return undefined
  }
  const { syllabusId, topicId } = check
  const made: LearnedWording = {
    schema: 1,
    syllabusId,
    topicId,
    ref,
    checkId: check.id,
    ...wording,
    by: 'student',
    atMs: readNow().nowMs,
    pointText: point.text,
  }
  await keepWording(made)
  if (await recognised(page, made)) return made
  await forgetWording(check, ref, check.id)
  return undefined
}

async function recognised(page: Page, made: LearnedWording): Promise<boolean> {
  try {
    const learned = await learnedOf(made.syllabusId, page.topic)
    const report = await markInWorker(page.topic, page.text, learned).promise
    const now = report.points.find(({ ref }) => ref === made.ref)
    return now !== undefined && (now.outcome === 'full') === made.credited
  } catch {
    return false
  }
}

/** What the points learnt from one check, by ref. */
export async function learntFromCheck(check: Check): Promise<ReadonlyMap<string, LearnedWording>> {
  const own = (await listLearned(check)).filter(({ checkId }) => checkId === check.id)
  return new Map(own.map((one) => [one.ref, one]))
}
