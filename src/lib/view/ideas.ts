/** The mark scheme's notation read aloud. */
import type { IdeaMark, PointMark, Span } from '../marking/types'
import { NotationError, readIdea, type Point } from '../syllabus'

/**
 * An idea in plain words: the first wording of each part, optional words kept, brackets and quotation marks left out.
 * `trap / catch + sand / shingle` is "trap … sand". Equations and values come back as they are written.
 */
export function plainIdea({ idea, kind }: Pick<IdeaMark, 'idea' | 'kind'>): string {
  if (kind === 'equation' || kind === 'value') return idea
  try {
    return readIdea(idea)
      .parts.map(({ wordings }) => (wordings[0]?.words ?? []).map(({ text }) => text).join(' '))
      .join(' … ')
  } catch (error) {
    // A record of an older notation: as written is better than not at all.
    if (error instanceof NotationError) return idea
    throw error
  }
}

/** One idea of a point as it stands beside the page: the student's own words, or the idea that is not said. */
export type IdeaPiece =
  { readonly said: true; readonly words: string } | { readonly said: false; readonly idea: string }

/** The ideas of a point in its own order. Of a list point, an idea that was not needed is left out. */
export function ideaPieces(text: string, point: Point, { ideas }: PointMark): IdeaPiece[] {
  const found = ideas.filter((idea) => idea.found).length
  const enough = point.any !== undefined && found >= point.any
  return ideas.flatMap((mark): IdeaPiece[] => {
    if (mark.found) return [{ said: true, words: quoted(text, mark.spans) || plainIdea(mark) }]
    return enough ? [] : [{ said: false, idea: plainIdea(mark) }]
  })
}

/** For a list point how many more of its items were needed; `undefined` for every other point. */
export function stillNeeded(point: Point, { ideas }: PointMark): number | undefined {
  if (point.any === undefined) return undefined
  return Math.max(0, point.any - ideas.filter(({ found }) => found).length)
}

const quoted = (text: string, spans: readonly Span[]): string =>
  spans
    .map(({ start, end }) => oneLine(text.slice(start, end)))
    .filter((words) => words !== '')
    .join(' … ')

/** Line breaks and runs of blanks as one space: for a quotation in a sentence, never for the page itself. */
export const oneLine = (words: string): string => words.replace(/\s+/g, ' ').trim()
