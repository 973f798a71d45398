import { calibration, learnedFrom, learnt, mark, type MarkedAnswer } from '../../lib/marking'
import { readAnswers, type Asked } from './answers'
import { seeded, shuffled } from './folds'
import { atCoverage, COVERAGES, twoWay, type Decided, type TwoWay } from './measures'

export type SetEvaluated = { readonly set: string } & TwoWay & {
    readonly coverage: readonly ReturnType<typeof atCoverage>[]
  }

/**
 * Each reference answer is taken as a point with no ideas, the question as the topic's title: what it gives away is little evidence
 * by itself. An answer is correct where one of the references is said. With `learn`, so many answers of each question, drawn with a fixed
 * seed, are taken as marked, and the rest is decided with what they teach.
 */
export function evaluateShortAnswers(
  paths: readonly string[],
  { learn = 0, wrong }: { learn?: number; wrong?: ((line: string) => void) | undefined } = {},
): SetEvaluated[] {
  const decided: Decided[] = []
  for (const answers of byQuestion(readAnswers(paths)).values()) {
    const order = learn === 0 ? answers : shuffled(answers, seeded(SEED))
    const learned = learnedFrom(order.slice(0, learn).map(markedAnswer))
    for (const answer of order.slice(learn)) {
      const logit = balance(answer) + learnt(answer.answer, learned)
      const called = logit >= 0
      if (wrong && called !== answer.correct) {
        wrong(
          `${answer.set}: ${called ? 'called correct' : 'not called correct'} (${logit.toFixed(2)}): ${answer.answer} | ${answer.question} | ${answer.references.join(' / ')}`,
        )
      }
      decided.push({ set: answer.set, correct: answer.correct, called, margin: Math.abs(logit) })
    }
  }
  return [...new Set(decided.map((d) => d.set))].map((set) => {
    const own = decided.filter((d) => d.set === set)
    return { set, ...twoWay(own), coverage: COVERAGES.map((share) => atCoverage(own, share)) }
  })
}
const SEED = 20130614

const markedAnswer = ({ answer, correct }: Asked): MarkedAnswer => ({
  text: answer,
  credited: correct,
})

function byQuestion(answers: readonly Asked[]): Map<string, Asked[]> {
  const questions = new Map<string, Asked[]>()
  for (const answer of answers) {
    const id = JSON.stringify([answer.set, answer.question])
    questions.set(id, [...(questions.get(id) ?? []), answer])
  }
  return questions
}

/** Log-odds above the border: of many references one may fit by chance, so each further one raises it. */
function balance({ topic, answer }: Asked): number {
  const sureness = Math.max(0, ...mark(topic, answer).points.map((point) => point.sureness))
  const kept = Math.min(1 - LEAST, Math.max(LEAST, sureness))
  const border = Math.log(calibration.correct / (1 - calibration.correct))
  return (
    Math.log(kept / (1 - kept)) -
    border -
    calibration.manyReferences * Math.log(Math.max(1, topic.points.length))
  )
}
const LEAST = 1e-4

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
