import {
  afterLearning,
  ALTERNATIVES,
  CORRECT,
  CORRECT_AFTER_LEARNING,
  mark,
} from '../../lib/marking'
import type { Topic } from '../../lib/syllabus'
import { drawn } from './drawn'
import { readShortAnswers, type ShortAnswer } from './labelled'
import { atCoverage, COVERAGES, twoWay, type Decided, type TwoWay } from './measures'

export type SetEvaluated = { readonly set: string } & TwoWay & {
    readonly coverage: readonly ReturnType<typeof atCoverage>[]
  }

/**
 * How sure the decision is, from 0 at the border to 1 at the surest. What is called correct counts for less: a false credit costs
 * more than a miss.
 */
export const marginOf = (sureness: number, border: number): number =>
  sureness >= border ? (CREDIT * (sureness - border)) / (1 - border) : (border - sureness) / border
const CREDIT = 0.6

/** The sureness that one of several reference answers is said, from that of the likeliest. */
export function anyOf(sureness: readonly number[]): number {
  const most = Math.min(1 - 1e-9, Math.max(1e-9, ...sureness))
  const many = sureness.length
  const odds =
    Math.log(most / (1 - most)) +
    ALTERNATIVES.many * Math.log2(many) +
    (many > 1 ? ALTERNATIVES.several : 0)
  return 1 / (1 + Math.exp(-odds))
}

/**
 * Each reference answer is taken as a point with no ideas, the question as the topic's title: what it gives away is no evidence
 * by itself. An answer is correct where one of the references is said.
 */
export function evaluateShortAnswers(
  paths: readonly string[],
  /** Marked answers that are learnt from for each question before the rest is marked. */
  learn = 0,
  wrong?: (line: string) => void,
): SetEvaluated[] {
  const topics = new Map<string, Topic>()
  const all = paths.flatMap(readShortAnswers).map((answer) => {
    const id = idOf(answer)
    const topic = topics.get(id) ?? topicOf(answer)
    topics.set(id, topic)
    const { points } = mark(topic, answer.answer)
    return { answer, sureness: anyOf(points.map((point) => point.sureness)) }
  })
  const after = learn === 0 ? all : drawn(all, ({ answer }) => idOf(answer), learn).flatMap(learnt)
  const border = learn === 0 ? CORRECT : CORRECT_AFTER_LEARNING
  const decided: Decided[] = after.map(({ answer, sureness }) => {
    const called = sureness >= border
    if (wrong && called !== answer.correct) {
      wrong(
        `${answer.set}: ${called ? 'called correct' : 'not called correct'} (${sureness.toFixed(2)}): ${answer.answer} | ${answer.question} | ${answer.references.join(' / ')}`,
      )
    }
    return { set: answer.set, correct: answer.correct, called, margin: marginOf(sureness, border) }
  })
  return [...new Set(decided.map((d) => d.set))].map((set) => {
    const own = decided.filter((d) => d.set === set)
    return { set, ...twoWay(own), coverage: COVERAGES.map((share) => atCoverage(own, share)) }
  })
}

const idOf = ({ question, references }: ShortAnswer) => JSON.stringify([question, references])

interface Sure {
  readonly answer: ShortAnswer
  readonly sureness: number
}

function learnt({
  drawn,
  rest,
}: {
  readonly drawn: readonly Sure[]
  readonly rest: readonly Sure[]
}) {
  const marked = drawn.map(({ answer, sureness }) => ({
    text: answer.answer,
    credited: answer.correct,
    sureness,
  }))
  return rest.map(({ answer, sureness }) => ({
    answer,
    sureness: afterLearning(answer.answer, sureness, marked),
  }))
}

export function topicOf({
  question,
  references,
}: Pick<ShortAnswer, 'question' | 'references'>): Topic {
  return {
    id: 'answer',
    title: question,
    points: references.map((text, i) => ({ ref: String(i + 1), text, ideas: [] })),
  }
}

export function shortAnswersAsText(sets: readonly SetEvaluated[]): string {
  return sets
    .map(({ set, n, accuracy, macroF1, correctPrecision, correctRecall, coverage }) =>
      [
        `${set}: ${n} answers, accuracy ${accuracy.toFixed(3)}, macro-F1 ${macroF1.toFixed(3)}, correct: precision ${correctPrecision.toFixed(3)}, recall ${correctRecall.toFixed(3)}`,
        ...coverage.map(
          (c) =>
            `  surest ${c.coverage * 100} %: accuracy ${c.accuracy.toFixed(3)}, precision of correct ${c.correctPrecision.toFixed(3)}, called correct ${(c.correctShare * 100).toFixed(1)} %`,
        ),
      ].join('\n'),
    )
    .join('\n')
    .concat('\n')
}
