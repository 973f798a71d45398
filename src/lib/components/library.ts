/** Every syllabus there is: those that ship with the app and those that the user brought. */
import shipped from 'virtual:syllabi'
import { listSyllabi, StoreError } from '$lib/store'
import type { Settings, TopicPlace } from '$lib/recall'
import type { Syllabus, Topic } from '$lib/syllabus'
import { takenIds } from '$lib/view/taken'

/** A syllabus without its points: enough for every list, and nothing that a blank page may give away. */
export interface Outline {
  readonly id: string
  readonly title: string
  readonly note?: string
  readonly topics: readonly TopicOutline[]
}

export interface TopicOutline {
  readonly id: string
  readonly title: string
  readonly caution?: string
  /** How many points it has. */
  readonly points: number
}

export interface ListedSyllabus extends Outline {
  readonly shipped: boolean
  /** A brought syllabus that stands in for a shipped one of the same id. */
  readonly replaces: boolean
}

export interface Library {
  readonly syllabi: readonly ListedSyllabus[]
  /** Syllabi that are kept but cannot be read. */
  readonly unreadable: number
  /** Why what the user brought could not be read; the shipped ones are there all the same. */
  readonly fault?: string
}

/** Shipped ones first, in the order of their files; a brought one takes the place of a shipped one with its id. */
export async function openLibrary(): Promise<Library> {
  const { kept, unreadable, fault } = await brought()
  const outlines = shipped.map(({ outline }) => outline)
  const own = kept.map((syllabus) => ({
    ...outlineOf(syllabus),
    shipped: false,
    replaces: outlines.some(({ id }) => id === syllabus.id),
  }))
  const others = outlines
    .filter(({ id }) => !own.some((syllabus) => syllabus.id === id))
    .map((outline) => ({ ...outline, shipped: true, replaces: false }))
  return { syllabi: [...others, ...own], unreadable, ...(fault === undefined ? {} : { fault }) }
}

/**
 * The syllabi that somebody works with, in the library's order: what they brought, and the shipped ones that they took.
 * Until they chose any, a shipped one is taken by a check or a draft. Empty on a first visit.
 */
export function syllabiInUse<T extends Pick<ListedSyllabus, 'id' | 'shipped' | 'topics'>>(
  syllabi: readonly T[],
  settings: Pick<Settings, 'syllabusIds'>,
  worked: readonly Pick<TopicPlace, 'syllabusId'>[],
): readonly T[] {
  const taken = takenIds(settings, worked)
  return syllabi.filter(({ id, shipped }) => !shipped || taken.includes(id))
}

/** A topic's title and number of points; `undefined` where there is no such topic. */
export async function topicOutline(syllabusId: string, topicId: string) {
  const { syllabi } = await openLibrary()
  const syllabus = syllabi.find(({ id }) => id === syllabusId)
  const topic = syllabus?.topics.find(({ id }) => id === topicId)
  return syllabus && topic ? { syllabus, topic } : undefined
}

/** The whole topic, points and all. Rejects where the file of a shipped syllabus cannot be loaded. */
export async function findTopic(
  syllabusId: string,
  topicId: string,
): Promise<{ syllabus: Syllabus; topic: Topic } | undefined> {
  const { kept } = await brought()
  const syllabus = kept.find(({ id }) => id === syllabusId) ?? (await loadShipped(syllabusId))
  const topic = syllabus?.topics.find(({ id }) => id === topicId)
  return syllabus && topic ? { syllabus, topic } : undefined
}

/** The whole syllabus: what the user brought, else what ships. `undefined` where there is none of this id. */
export async function findSyllabus(id: string): Promise<Syllabus | undefined> {
  const { kept } = await brought()
  return kept.find((syllabus) => syllabus.id === id) ?? (await loadShipped(id))
}

/** `undefined` where none of this id ships. */
export const loadShipped = async (id: string): Promise<Syllabus | undefined> =>
  shipped.find(({ outline }) => outline.id === id)?.load()

/** The file of a shipped syllabus as its author wrote it; `undefined` where none of this id ships. */
export const loadShippedSource = async (id: string): Promise<string | undefined> =>
  shipped.find(({ outline }) => outline.id === id)?.source()

export function outlineOf({ id, title, note, topics }: Syllabus): Outline {
  return {
    id,
    title,
    ...(note === undefined ? {} : { note }),
    topics: topics.map((topic) => ({
      id: topic.id,
      title: topic.title,
      ...(topic.caution === undefined ? {} : { caution: topic.caution }),
      points: topic.points.length,
    })),
  }
}

/** Where nothing can be kept, the shipped syllabi still work: the fault is told, not thrown. */
async function brought(): Promise<{ kept: Syllabus[]; unreadable: number; fault?: string }> {
  try {
    const { syllabi, unreadable } = await listSyllabi()
    return { kept: syllabi.map(({ syllabus }) => syllabus), unreadable }
  } catch (error) {
    if (error instanceof StoreError) return { kept: [], unreadable: 0, fault: error.message }
    throw error
  }
}
