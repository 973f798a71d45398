/** Points -> what stands on the wall sheet and on its cards. */
import type { Outcome } from '../marking/types'
import type { Point, Wording } from '../syllabus'
import { plainIdea } from './ideas'

/** A point on the sheet; `outcome` is absent where it was never seen. */
export interface SheetPoint {
  /** Unique on the sheet. */
  readonly key: string
  readonly point: Point
  readonly topicTitle: string
  readonly outcome?: Outcome
}

/** The points of one topic. */
export interface SheetGroup {
  readonly topicId: string
  readonly title: string
  readonly caution?: string
  readonly points: readonly SheetPoint[]
}

/** Second ink is for what was missed: a point that was full, or never seen, is written in first ink. */
export const isMissed = ({ outcome }: SheetPoint): boolean =>
  outcome !== undefined && outcome !== 'full'

/** A card: a point, or the caution of a topic, which goes before its points. */
export type Card =
  | { readonly key: string; readonly kind: 'point'; readonly item: SheetPoint }
  | {
      readonly key: string
      readonly kind: 'caution'
      readonly topicTitle: string
      readonly caution: string
    }

export const cardsOf = (groups: readonly SheetGroup[]): Card[] =>
  groups.flatMap(({ topicId, title, caution, points }): Card[] => [
    ...(caution && points.length > 0
      ? [{ key: `caution ${topicId}`, kind: 'caution' as const, topicTitle: title, caution }]
      : []),
    ...points.map((item) => ({ key: item.key, kind: 'point' as const, item })),
  ])

/** The steps of a point, numbered, in the syllabus's own words. */
export interface Steps {
  /** What stands before the first step; may be empty. */
  readonly lead: string
  readonly steps: readonly string[]
  /** Whether lead and steps are the point's text, cut; else the text has to stand beside them. */
  readonly wordForWord: boolean
}

/**
 * The text cut where it says "then", where that gives as many pieces as the point has steps: nothing is reworded. Else the
 * steps as their author noted them. `undefined` for a point without steps.
 */
export function stepsOf({ text, steps }: Point): Steps | undefined {
  if (!steps || steps.length === 0) return undefined
  const pieces = text
    .replace(/\.\s*$/, '')
    .split(/(?:,|;)?\s+(?:and\s+)?then\s+|(?:,|;)\s+and\s+(?:finally\s+)?(?=after\b)/)
  if (pieces.length === steps.length) {
    const [first = '', ...rest] = pieces
    const at = leadEnd(first)
    return {
      lead: first.slice(0, at).replace(/[,:]\s*$/, ''),
      steps: [first.slice(at), ...rest].map((step) => step.trim()),
      wordForWord: true,
    }
  }
  return {
    lead: '',
    steps: steps.map(({ written }) => plainIdea({ idea: written, kind: 'step' })),
    wordForWord: false,
  }
}

/** "To measure drift, mark a pebble": the lead ends with its comma. */
function leadEnd(first: string): number {
  const comma = /^(?:To|For|In)\s[^,:]*[,:]\s+/.exec(first)
  return comma ? comma[0].length : 0
}

/** Each symbol of an equation and the first of the words that stand for it. */
export const symbolRows = ({ equation }: Point): { symbol: string; words: string }[] =>
  Object.entries(equation?.where ?? {}).flatMap(([symbol, wordings]) => {
    const words = firstWords(wordings)
    return words === '' ? [] : [{ symbol, words }]
  })

const firstWords = ([first]: readonly Wording[]): string =>
  (first?.words ?? []).map(({ text }) => text).join(' ')
