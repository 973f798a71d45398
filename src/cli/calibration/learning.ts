/** What marked answers are worth: learnt from short answers of which a few were marked. */
import { learningEvidence, type MarkedAnswer } from '../../lib/marking'
import { drawn } from '../evaluation/drawn'
import { fit, probability, type Model } from './logistic'

/** A short answer with the sureness that it has without learning, out of fold. */
export interface Foreseen {
  readonly set: string
  readonly question: string
  readonly answer: string
  readonly correct: boolean
  readonly sureness: number
  readonly fold: number
}

interface Example extends Foreseen {
  readonly x: readonly number[]
  readonly marked: number
}

/** How many marked answers are learnt from. */
export const MARKED = [3, 5, 10] as const

export function examplesOf(all: readonly Foreseen[]): Example[] {
  return MARKED.flatMap((count) =>
    drawn(all, ({ question }) => question, count).flatMap((group) => {
      const marked: MarkedAnswer[] = group.drawn.map(({ answer, correct, sureness }) => ({
        text: answer,
        credited: correct,
        sureness,
      }))
      return group.rest.map((one) => ({
        ...one,
        marked: count,
        x: learningEvidence(one.answer, one.sureness, marked),
      }))
    }),
  )
}

/** Each set weighs the same. */
export function learnLearning(examples: readonly Example[]): Model {
  const sizes = new Map<string, number>()
  for (const { set } of examples) sizes.set(set, (sizes.get(set) ?? 0) + 1)
  return fit(
    examples.map(({ x, correct, set }) => ({
      x,
      y: correct,
      weight: examples.length / sizes.size / sizes.get(set)!,
    })),
    5,
  )
}

/** Every example by a model that has seen nothing of its question. */
export function outOfFold(examples: readonly Example[], folds: number) {
  return Array.from({ length: folds }, (_, f) => {
    const model = learnLearning(examples.filter(({ fold }) => fold !== f))
    return examples
      .filter(({ fold }) => fold === f)
      .map(({ set, correct, marked, x }) => ({ set, correct, marked, p: probability(model, x) }))
  }).flat()
}
