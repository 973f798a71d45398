/** A marked check -> one line for each point, with all that stands beside it. */
import type { Clash, Outcome, PointMark, Report } from '../marking/types'
import { decidedOutcomes, type Check, type Decider } from '../recall'
import type { Point, Topic } from '../syllabus'
import { coversOf, type Standing } from './covers'
import { ideaPieces, oneLine, stillNeeded, type IdeaPiece } from './ideas'
import { anchorOf, placePoints, type Arrangement } from './placement'
import { outcomeWords, scoreLine } from './sentences'
import { segmentsOf, type Segment } from './segments'

export interface PointLine {
  readonly ref: string
  /** Word for word as the syllabus has it. */
  readonly text: string
  /** The mark that stands, and whose it is. */
  readonly outcome: Outcome
  readonly by: Decider
  readonly marker: Outcome
  /** The marker's sentence; empty where `pieces` say the same in two inks. */
  readonly why: string
  /** What was said and what was not; empty unless the point is part said. */
  readonly pieces: readonly IdeaPiece[]
  /** Of a list point part said: how many more of its items were needed. */
  readonly needed: number | undefined
  /** The student's words that clash, and what the syllabus has instead where its own text does not say it. */
  readonly clash?: {
    readonly words: string
    readonly against?: string
    readonly kind: Clash['kind']
  }
  /** The nearest statement to a point that is not full. */
  readonly nearest?: string
  /** The marker was in doubt and nobody has decided yet. */
  readonly asks: boolean
}

/** Rule 19: the marks that stand, by point. */
export const standingOf = (check: Check): Standing =>
  new Map(decidedOutcomes(check).map(({ ref, outcome }) => [ref, outcome]))

/** One for each point of the report, in its order. A point that the topic lost is shown by its reference alone. */
export function pointLines(check: Check, page: { text: string; topic: Topic; report: Report }) {
  const decided = new Map(decidedOutcomes(check).map((mark) => [mark.ref, mark]))
  const points = new Map(page.topic.points.map((point) => [point.ref, point]))
  return page.report.points.map((mark): PointLine => {
    const point = points.get(mark.ref) ?? { ref: mark.ref, text: '', ideas: [] }
    const { outcome, by } = decided.get(mark.ref) ?? { outcome: mark.outcome, by: 'marker' }
    return lineOf(page.text, point, mark, outcome, by)
  })
}

function lineOf(
  text: string,
  point: Point,
  mark: PointMark,
  outcome: Outcome,
  by: Decider,
): PointLine {
  const { clash, nearest } = mark
  // The steps in their order, and the point itself, are there already.
  const told = clash?.kind === 'order' || oneLine(clash?.against ?? '') === oneLine(point.text)
  const against = told ? undefined : clash?.against
  const part = outcome === 'partial'
  return {
    ref: point.ref,
    text: point.text,
    outcome,
    by,
    marker: mark.outcome,
    why: part && by === 'marker' && piecesSayWhy(mark) ? '' : mark.why,
    pieces: part ? ideaPieces(text, point, mark) : [],
    needed: part ? stillNeeded(point, mark) : undefined,
    ...(clash && outcome === 'contradicted'
      ? {
          clash: {
            words: oneLine(text.slice(clash.words.start, clash.words.end)),
            kind: clash.kind,
            ...(against === undefined ? {} : { against }),
          },
        }
      : {}),
    ...(nearest && outcome !== 'full'
      ? { nearest: oneLine(text.slice(nearest.start, nearest.end)) }
      : {}),
    asks: mark.offered && nearest !== undefined && by === 'marker',
  }
}

/** Of an equation or a value the marker can say more than "not said". */
const piecesSayWhy = ({ ideas }: PointMark): boolean =>
  ideas.length > 0 && ideas.every(({ kind }) => kind === 'idea' || kind === 'step')

/** A stretch of the page, or the point that is put in there. */
export type Stretch =
  | { readonly kind: 'text'; readonly segment: Segment }
  | { readonly kind: 'point'; readonly line: PointLine }
  /** Where a missed point is put in, in a margin's arrangement; its point follows. */
  | { readonly kind: 'caret'; readonly ref: string }

/** The page with its points put in. The texts of its segments put together are the page, character for character. */
export function stretchesOf(
  check: Check,
  page: { text: string; topic: Topic; report: Report },
  arrangement: Arrangement,
): Stretch[] {
  const { text, report } = page
  const lines = pointLines(check, page)
  const covers = coversOf(report, standingOf(check))
  const anchors = report.points.map((point) => anchorOf(point, covers, report.statements))
  const places = placePoints(text, anchors, arrangement)
  const segments = segmentsOf(
    text,
    covers,
    places.map(({ at }) => at),
  )
  const stretches: Stretch[] = []
  let next = 0
  const putIn = (until: number) => {
    for (; next < places.length && places[next]!.at <= until; next++) {
      const line = lines[places[next]!.index]!
      if (arrangement === 'syllabus' && line.outcome === 'missed' && !line.asks)
        stretches.push({ kind: 'caret', ref: line.ref })
      stretches.push({ kind: 'point', line })
    }
  }
  for (const segment of segments) {
    putIn(segment.start)
    stretches.push({ kind: 'text', segment })
  }
  putIn(text.length)
  return stretches
}

/** What a live region says after a mark was changed or taken back. */
export function changeSentence(line: PointLine, recall: Parameters<typeof scoreLine>[0]): string {
  const whose =
    line.by === 'marker'
      ? 'the marker’s again'
      : line.by === 'tutor'
        ? 'the tutor’s mark'
        : 'your mark'
  return `Point ${line.ref}: ${outcomeWords(line.outcome)}, ${whose}. ${scoreLine(recall)}`
}
