/** What a changed syllabus means for the checks that are kept, told before it is put in use; and putting it in use. */
import { marksOfToday, refToday, type Check, type EditedPoint } from '$lib/recall'
import { openExaminer } from './editor/examiner'
import { findSyllabus, loadShipped } from './library'
import {
  changeSyllabus,
  getPage,
  listChecks,
  listPapers,
  type KeptSyllabus,
  type Page,
} from '$lib/store'
import {
  pointsSince,
  readIdea,
  type Idea,
  type Point,
  type Syllabus,
  type Topic,
} from '$lib/syllabus'
import type { Report } from '$lib/marking'

export interface Ahead {
  readonly id: string
  /** Checks of this syllabus that are kept. */
  readonly checks: number
  /** Points that have been checked and begin anew. */
  readonly anew: readonly { readonly ref: string; readonly topic: string }[]
  /** Topics that have been checked and are gone: their checks stay. */
  readonly gone: readonly string[]
  /** For each check by id what became of its points. */
  readonly edited: ReadonlyMap<string, readonly EditedPoint[]>
  /** For each question of a paper by id. */
  readonly papers: ReadonlyMap<string, readonly EditedPoint[]>
}

/** The ideas that points are marked by where their author gave none, by ref. */
type Drafted = Readonly<Record<string, readonly string[]>>

const draftedIn = ({ points }: Report): Drafted =>
  Object.fromEntries(
    points
      .filter(({ drafted }) => drafted)
      .map(({ ref, ideas }) => [
        ref,
        ideas.filter(({ kind }) => kind === 'idea').map(({ idea }) => idea),
      ]),
  )

/** Rejects where the checks cannot be read: then nothing can be said, and nothing is changed. */
export async function lookAhead(now: Syllabus): Promise<Ahead> {
  // Drafts are the marker's, away from the page; it starts only where a point has no ideas of its own.
  const examiner = openExaminer()
  try {
    return await ahead(now, async (topic) => draftedIn(await examiner.mark(topic, '')))
  } finally {
    examiner.close()
  }
}

async function ahead(now: Syllabus, draftedOf: (topic: Topic) => Promise<Drafted>): Promise<Ahead> {
  const { checks } = await listChecks()
  const own = checks.filter(({ syllabusId }) => syllabusId === now.id)
  const edited = new Map<string, readonly EditedPoint[]>()
  for (const check of own) {
    const page = await getPage(check.id)
    const topic = now.topics.find(({ id }) => id === check.topicId)
    if (!page || !topic) continue
    const drafted = topic.points.some(({ ideas }) => ideas.length === 0)
      ? await draftedOf(topic)
      : {}
    const ideasOf = ideasBy(page, topic.points, drafted)
    edited.set(check.id, pointsSince(page.topic.points, topic.points, ideasOf))
  }
  const anew = now.topics.flatMap((topic) => {
    const before = own.filter(({ topicId }) => topicId === topic.id)
    const after = before.map((check) => ({ ...check, edited: edited.get(check.id) ?? [] }))
    const [was, is] = [seenRefs(before), seenRefs(after)]
    return topic.points
      .filter(({ ref }) => was.has(ref) && !is.has(ref))
      .map(({ ref }) => ({ ref, topic: topic.title }))
  })
  const gone = new Map(
    own
      .filter(({ topicId }) => !now.topics.some(({ id }) => id === topicId))
      .map(({ topicId, topicTitle }) => [topicId, topicTitle]),
  )
  const papers = await papersSince(now)
  return { id: now.id, checks: own.length, anew, gone: [...gone.values()], edited, papers }
}

/** No paper says what its points meant then: what became of them is followed from one change to the next. */
async function papersSince(now: Syllabus): Promise<Ahead['papers']> {
  const { papers } = await listPapers()
  const before = await findSyllabus(now.id)
  const since = new Map<string, readonly EditedPoint[]>()
  for (const { id, topicId, points, edited } of papers.filter((p) => p.syllabusId === now.id)) {
    const [was, is] = [before, now].map((one) => one?.topics.find((topic) => topic.id === topicId))
    if (!was || !is) continue
    const changed = pointsSince(was.points, is.points)
    const refs = points.map(({ ref }) => {
      const then = refToday(edited, ref)
      return { ref, now: then === null ? null : refToday(changed, then) }
    })
    since.set(
      id,
      refs.filter((point) => point.now !== point.ref),
    )
  }
  return since
}

const seenRefs = (checks: readonly Check[]): ReadonlySet<string> =>
  new Set(checks.flatMap(marksOfToday).map(({ ref }) => ref))

/** Of the page's points the ideas that it was marked by then; of today's those that would be drafted now. */
function ideasBy(page: Page, today: readonly Point[], draftedNow: Drafted) {
  const now = new Set(today)
  const draftedThen = draftedIn(page.report)
  return (point: Point): readonly Idea[] => {
    if (point.ideas.length > 0) return point.ideas
    const drafted = now.has(point) ? draftedNow : draftedThen
    return (drafted[point.ref] ?? []).flatMap(readable)
  }
}

/** Of an older marker's notation nothing can be said. */
function readable(written: string): Idea[] {
  try {
    return [readIdea(written)]
  } catch {
    return []
  }
}

/** Puts a syllabus in use; without one the user's copy goes and the shipped one is there again. */
export const putInUse = (ahead: Ahead, kept?: KeptSyllabus): Promise<void> =>
  changeSyllabus({
    id: ahead.id,
    edited: ahead.edited,
    papers: ahead.papers,
    ...(kept ? { kept } : {}),
  })

/** Keeps a syllabus that was brought; where one of its id is here already, its points are told apart by what they ask. */
export const keepSyllabus = async (kept: KeptSyllabus): Promise<void> =>
  putInUse(await lookAhead(kept.syllabus), kept)

/**
 * Takes a syllabus of the user's away, with an edit of it that was begun. Where one of its id ships, that one is there
 * again, and the points of the checks are told apart by what it asks.
 */
export async function takeAway(id: string): Promise<void> {
  const shipped = await loadShipped(id)
  const none = new Map<string, never>()
  await (shipped
    ? putInUse(await lookAhead(shipped))
    : changeSyllabus({ id, edited: none, papers: none }))
}
