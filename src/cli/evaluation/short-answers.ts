import { mark } from '../../lib/marking'
import type { Topic } from '../../lib/syllabus'
import { readShortAnswers, type ShortAnswer } from './labelled'
import { atCoverage, COVERAGES, twoWay, type Decided, type TwoWay } from './measures'

export type SetEvaluated = { readonly set: string } & TwoWay & {
    readonly coverage: readonly ReturnType<typeof atCoverage>[]
  }

/** From this sureness on a short answer is called correct. */
const CORRECT = 0.5

/**
 * Each reference answer is taken as a point with no ideas, the question as the topic's title: what it gives away is no evidence
 * by itself. An answer is correct where one of the references is said.
 */
export function evaluateShortAnswers(
  paths: readonly string[],
  wrong?: (line: string) => void,
): SetEvaluated[] {
  const decided: Decided[] = []
  const topics = new Map<string, Topic>()
  for (const answer of paths.flatMap(readShortAnswers)) {
    const id = JSON.stringify([answer.question, answer.references])
    const topic = topics.get(id) ?? topicOf(answer)
    topics.set(id, topic)
    const report = mark(topic, answer.answer)
    const sureness = Math.max(0, ...report.points.map((point) => point.sureness))
    const called = sureness >= CORRECT
    if (wrong && called !== answer.correct) {
      wrong(
        `${answer.set}: ${called ? 'called correct' : 'not called correct'} (${sureness.toFixed(2)}): ${answer.answer} | ${answer.question} | ${answer.references.join(' / ')}`,
      )
    }
    decided.push({
      set: answer.set,
      correct: answer.correct,
      called,
      margin: Math.abs(sureness - CORRECT),
    })
  }
  return [...new Set(decided.map((d) => d.set))].map((set) => {
    const own = decided.filter((d) => d.set === set)
    return { set, ...twoWay(own), coverage: COVERAGES.map((share) => atCoverage(own, share)) }
  })
}

function topicOf({ question, references }: ShortAnswer): Topic {
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
