/** Drafted points on labelled dumps: what their outcome is weighed by, learnt and measured with no topic in two folds. */
import {
  draftedCases,
  probabilities,
  WEIGHED,
  type ClassWeights,
  type DraftedCase,
  type Outcome,
} from '../../lib/marking'
import { withoutIdeas } from '../evaluation/dumps'
import { readLabelledFolder } from '../evaluation/labelled'
import { measure, type Measures } from '../evaluation/measures'
import { fitClasses } from './multinomial'

export interface LabelledCase extends DraftedCase {
  readonly topic: string
  readonly style: string
  readonly label: Outcome
}

/** All points drafted, or only those that the file gives no ideas for. */
export function labelledCases(folder: string, all = true): LabelledCase[] {
  return readLabelledFolder(folder).flatMap(({ name, topic, dumps }) => {
    const asked = all ? withoutIdeas(topic) : topic
    return dumps.flatMap(({ text, style, labels }) =>
      draftedCases(asked, text).flatMap((found) => {
        const label = labels[found.ref]
        return label ? [{ ...found, topic: name, style, label: label.mark }] : []
      }),
    )
  })
}

const PENALTY = 10

export function learnDrafted(cases: readonly LabelledCase[]): ClassWeights[] {
  const rows = cases.flatMap(({ evidence, label }) =>
    evidence ? [{ x: evidence, y: WEIGHED.indexOf(label) }] : [],
  )
  return fitClasses(rows, WEIGHED.length, PENALTY)
}

/**
 * For each case the probabilities by a model that was learnt from `from` without the dumps of its topic; undefined where nothing is
 * weighed.
 */
export function outOfTopic(
  cases: readonly LabelledCase[],
  from: readonly LabelledCase[] = cases,
): (readonly number[] | undefined)[] {
  const models = new Map(
    [...new Set(cases.map(({ topic }) => topic))].map((topic) => [
      topic,
      learnDrafted(from.filter((one) => one.topic !== topic)),
    ]),
  )
  return cases.map(({ topic, evidence }) => evidence && probabilities(models.get(topic)!, evidence))
}

export function measuredAt(
  cases: readonly LabelledCase[],
  weighed: readonly (readonly number[] | undefined)[],
  sure: number,
): Measures {
  return measure(
    cases.map(({ topic, style, label, outcome }, i) => {
      const p = weighed[i]
      const found = !p ? outcome : p[0]! >= sure ? 'full' : p[1]! >= p[2]! ? 'partial' : 'missed'
      return { topic, style, label, outcome: found, offered: false }
    }),
  )
}

/** What a drafted point that is called full must reach, out of fold. */
const LEAST_PRECISION = 0.9
const MOST_FALSE_CREDIT = 0.015

/** The lowest border that reaches both, in hundredths. */
export function borderOfDrafted(
  cases: readonly LabelledCase[],
  weighed: readonly (readonly number[] | undefined)[],
): number {
  for (let hundredths = 50; hundredths < 99; hundredths += 1) {
    const { fullPrecision, falseCredit } = measuredAt(cases, weighed, hundredths / 100)
    if (fullPrecision >= LEAST_PRECISION && falseCredit <= MOST_FALSE_CREDIT)
      return hundredths / 100
  }
  return 0.99
}
