import type { Topic } from '../syllabus/types'
import { readPage } from './1-statements/page'
import { readyTopic } from './2-ideas/ready'
import { beyondThe } from './3-outcomes/beyond'
import { openCase, type Case, type Judgement } from './3-outcomes/judge'
import { judge } from './3-outcomes/verdict'
import { explain } from './3-outcomes/explain'
import { spanOf, spansOf } from './3-outcomes/spans'
import { recognise, type Learned } from './3-outcomes/recognise'
import type { PointMark, Report, Span } from './types'

/** Part of every report; it changes with every change that can change an outcome. */
export const MARKER = '1.4.0'

export interface MarkOptions {
  /** What was marked of the points before: accepted wordings, and refused ones. */
  readonly learned?: Learned
}

/**
 * Marks one dump against one topic by the marking rules. Deterministic; never throws on a student's words, any Unicode text will
 * do. Spans are UTF-16 offsets into `dump`.
 */
export function mark(topic: Topic, dump: string, { learned }: MarkOptions = {}): Report {
  const ready = readyTopic(topic)
  const page = readPage(dump, ready.vocabulary)
  const open = openCase(page, ready)
  const judgements = ready.points.map(({ point }, index) => {
    const own = learned && Object.hasOwn(learned, point.ref) ? learned[point.ref]! : []
    return recognise(open, judge(open, index), own)
  })
  return {
    marker: MARKER,
    topic: topic.id,
    points: judgements.map((judgement, index) => pointMark(open, index, judgement)),
    statements: page.statements.map(spanOnly),
    beyond: beyondThe(open, judgements).map((s) => spanOnly(page.statements[s]!)),
  }
}

function pointMark({ page, topic }: Case, index: number, judgement: Judgement): PointMark {
  const { point, drafted } = topic.points[index]!
  const { outcome, claims, said, clash, nearest, offered, sureness, inOtherWords } = judgement
  // Weighed as full: what no idea was found for is said there in other words.
  const elsewhere = inOtherWords === undefined ? [] : [spanOnly(page.statements[inOtherWords]!)]
  return {
    ref: point.ref,
    outcome,
    ideas: claims.map(({ label, kind }, i) => {
      const spans = said[i] ? spansOf(page, said[i].at) : elsewhere
      return { idea: label, kind, found: spans.length > 0, spans }
    }),
    drafted,
    ...(nearest === undefined ? {} : { nearest: spanOnly(page.statements[nearest]!) }),
    offered,
    ...(clash
      ? {
          clash: {
            statement: spanOnly(page.statements[clash.statement]!),
            words: spanOf(page, clash.at),
            against: clash.against,
            kind: clash.kind,
          },
        }
      : {}),
    sureness,
    why: explain(page, judgement),
  }
}

function spanOnly({ start, end }: Span): Span {
  return { start, end }
}
