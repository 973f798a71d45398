/** Short answers as rows to learn from, and the model that is learnt from them. */
import { evidenceOf } from '../../lib/marking'
import { topicOf } from '../evaluation/short-answers'
import { readShortAnswers } from '../evaluation/labelled'
import { fit, logOddsOf, type Model } from './logistic'

export interface Answered {
  readonly set: string
  readonly question: string
  readonly answer: string
  readonly correct: boolean
  /** The evidence for each reference answer, and how many there are. */
  readonly references: readonly (readonly number[])[]
}

export function answersFrom(paths: readonly string[]): Answered[] {
  const topics = new Map<string, ReturnType<typeof topicOf>>()
  return paths.flatMap(readShortAnswers).map((answer) => {
    const id = JSON.stringify([answer.question, answer.references])
    const topic = topics.get(id) ?? topicOf(answer)
    topics.set(id, topic)
    const found = evidenceOf(topic, answer.answer)
    const many = found.length
    return {
      set: answer.set,
      question: answer.question,
      answer: answer.answer,
      correct: answer.correct,
      references: found.map((x) => [...x, Math.log2(many), many > 1 ? 1 : 0]),
    }
  })
}

/** By `key` into `count` folds, in the order in which the keys first come: no key stands in two folds. */
export function foldsBy<T>(all: readonly T[], key: (one: T) => string, count: number): number[] {
  const keys = new Map<string, number>()
  for (const one of all) if (!keys.has(key(one))) keys.set(key(one), keys.size)
  return all.map((one) => keys.get(key(one))! % count)
}

const PENALTY = 5
const ROUNDS = 4

/**
 * One of several reference answers is enough, so a row is the reference that the model so far holds for the most likely; each set
 * weighs the same.
 */
export function learnFrom(answers: readonly Answered[]): Model {
  const sizes = new Map<string, number>()
  for (const { set } of answers) sizes.set(set, (sizes.get(set) ?? 0) + 1)
  let chosen = answers.map(({ references }) => most(references, (x) => x[0]! + x[6]!))
  let model: Model | undefined
  for (let round = 0; round < ROUNDS; round += 1) {
    const rows = answers.map(({ set, correct }, i) => ({
      x: chosen[i]!,
      y: correct,
      weight: answers.length / sizes.size / sizes.get(set)!,
    }))
    const made = fit(rows, PENALTY)
    chosen = answers.map(({ references }) => most(references, (x) => logOddsOf(made, x)))
    model = made
  }
  return model!
}

export const surenessOf = (model: Model, { references }: Answered): number =>
  1 / (1 + Math.exp(-Math.max(...references.map((x) => logOddsOf(model, x)))))

function most<T>(all: readonly T[], value: (one: T) => number): T {
  return all.reduce((a, b) => (value(b) > value(a) ? b : a))
}
