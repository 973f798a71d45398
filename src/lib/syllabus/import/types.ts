/** The nouns of an import: what came in, as blocks; what is made of it, as a draft that is looked at before it is kept. */
import type { Point } from '../types'

/** Where a piece stood in what was brought; numbers count from 1. */
export interface Place {
  readonly kind: 'page' | 'line' | 'row' | 'paragraph' | 'item'
  readonly number: number
}

/** The number, letter or bullet in front of a text. */
export interface Mark {
  /** As written, without brackets and final stop: `3.1.2`, `a`, `iv`; '' for a bullet. */
  readonly ref: string
  readonly style: 'number' | 'letter' | 'roman' | 'bullet'
}

/** One heading, paragraph or list item, in the order in which it is read. */
export interface Block {
  readonly as: 'heading' | 'text'
  /** Without its mark, on one line. */
  readonly text: string
  readonly mark?: Mark
  /** Of a heading: 1 is the highest. Of a list item: how deep it is nested, from 0. */
  readonly level: number
  readonly place: Place
  /** Why it is left out of the draft at first. */
  readonly out?: string
  /** The text is the point as it stands: it is not parted, and nothing is put in front of it. */
  readonly whole?: boolean
}

export type Role = 'topic' | 'point' | 'out'

/** One line of a draft. The points of a topic are those that follow it. */
export interface DraftLine {
  /** Unique within the draft. */
  readonly key: number
  readonly role: Role
  /** '' where it has none yet; a topic needs none. */
  readonly ref: string
  readonly text: string
  /** Of a heading: how deep it stood, from 1. */
  readonly depth?: number
  /** The ref was counted here: what was brought had none for it. */
  readonly counted?: boolean
  readonly place?: Place
  /** Why it is left out. */
  readonly why?: string
  /** What else the point has: its ideas, its equation, … */
  readonly more?: Omit<Point, 'ref' | 'text'>
  /** Of a topic. */
  readonly caution?: string
}

export interface DraftWarning {
  readonly message: string
  readonly place?: Place
}

/** A syllabus in the making. `lines` is its tree written down: topics, each followed by its points. */
export interface DraftTree {
  readonly title: string
  readonly note?: string
  readonly lines: readonly DraftLine[]
  readonly warnings: readonly DraftWarning[]
}

/** `fault` is a sentence for the user: what is wrong, where, and what to do. */
export type DraftRead =
  | { readonly ok: true; readonly tree: DraftTree }
  | { readonly ok: false; readonly fault: string; readonly place?: Place }

/** More than a course of two years has; a page that shows them stays quick. */
export const MOST_LINES = 5000

/** "page 3", "row 12". */
export const placeWords = ({ kind, number }: Place): string => `${kind} ${number}`
