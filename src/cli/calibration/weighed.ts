/** Points on labelled dumps: what their outcome is weighed by, learnt and measured with no topic in two folds. */
import {
  probabilities,
  WEIGHED,
  type ClassWeights,
  weighedCases,
  type Outcome,
  type WeighedCase,
} from '../../lib/marking'
import { withoutIdeas } from '../evaluation/dumps'
import { readLabelledFolder } from '../evaluation/labelled'
import { measure, type Measures } from '../evaluation/measures'
import { fitClasses } from './multinomial'

export interface LabelledCase extends WeighedCase {
  readonly topic: string
  readonly style: string
  readonly label: Outcome
}

/** All points drafted, or only those that the file gives no ideas for. */
export function labelledCases(folder: string, all = true): LabelledCase[] {
  return readLabelledFolder(folder).flatMap(({ name, topic, dumps }) => {
    const asked = all ? withoutIdeas(topic) : topic
    return dumps.flatMap(({ text, style, labels }) =>
      weighedCases(asked, text).flatMap((found) => {
        const label = labels[found.ref]
        return label ? [{ ...found, topic: name, style, label: label.mark }] : []
      }),
    )
  })
}

const PENALTY = { drafted: 10, authored: 20 } as const

/** From the drafted points among the cases, or from those with ideas of their author's. */
export function learnWeights(cases: readonly LabelledCase[], drafted: boolean): ClassWeights[] {
  const rows = cases.flatMap(({ evidence, label, ...one }) =>
    evidence && one.drafted === drafted ? [{ x: evidence, y: WEIGHED.indexOf(label) }] : [],
  )
  return fitClasses(rows, WEIGHED.length, drafted ? PENALTY.drafted : PENALTY.authored)
}

/** What the model says of each case; undefined where nothing is weighed. */
export type Foretold = readonly (readonly number[] | undefined)[]

/** The probabilities by a model that was learnt without the dumps of the case's topic: drafted points from `drafts`, the others from the cases. */
export function outOfTopic(
  cases: readonly LabelledCase[],
  drafts: readonly LabelledCase[] = cases,
): Foretold {
  const models = new Map(
    [...new Set(cases.map(({ topic }) => topic))].map((topic) => {
      const others = (all: readonly LabelledCase[]) => all.filter((one) => one.topic !== topic)
      const authored = others(cases)
      return [
        topic,
        {
          drafted: learnWeights(others(drafts), true),
          authored: authored.some((one) => !one.drafted) ? learnWeights(authored, false) : [],
        },
      ]
    }),
  )
  return cases.map(({ topic, evidence, drafted }) => {
    const { drafted: draft, authored } = models.get(topic)!
    return evidence && probabilities(drafted ? draft : authored, evidence)
  })
}

/** From which probability on a point is full. */
export interface Borders {
  readonly drafted: number
  readonly authored: number
}

export function measuredAt(
  cases: readonly LabelledCase[],
  foretold: Foretold,
  borders: Borders,
): Measures {
  return measure(
    cases.map((one, i) => {
      const { topic, style, label } = one
      return { topic, style, label, outcome: outcomeOf(one, foretold[i], borders), offered: false }
    }),
  )
}

function outcomeOf(
  { outcome, drafted, nearly }: LabelledCase,
  p: readonly number[] | undefined,
  borders: Borders,
): Outcome {
  if (!p) return outcome
  if (!drafted) return nearly && p[0]! >= borders.authored ? 'full' : outcome
  return p[0]! >= borders.drafted ? 'full' : p[1]! >= p[2]! ? 'partial' : 'missed'
}

interface Reached {
  readonly precision: number
  readonly falseCredit: number
}
/** What must be reached out of fold where every point is drafted, and where points have ideas of their author's. */
const DRAFTED_REACHES: Reached = { precision: 0.9, falseCredit: 0.015 }
const AUTHORED_REACHES: Reached = { precision: 0.955, falseCredit: 0.01 }

/** The lowest borders that reach both, in hundredths. */
export function bordersOf(
  drafts: readonly LabelledCase[],
  given: readonly LabelledCase[],
  foretold: { readonly drafts: Foretold; readonly given: Foretold },
): Borders {
  const drafted = lowest(DRAFTED_REACHES, (border) =>
    measuredAt(drafts, foretold.drafts, { drafted: border, authored: 1 }),
  )
  const authored = lowest(AUTHORED_REACHES, (border) =>
    measuredAt(given, foretold.given, { drafted, authored: border }),
  )
  return { drafted, authored }
}

function lowest({ precision, falseCredit }: Reached, at: (border: number) => Measures): number {
  for (let hundredths = 50; hundredths < 99; hundredths += 1) {
    const reached = at(hundredths / 100)
    if (reached.fullPrecision >= precision && reached.falseCredit <= falseCredit)
      return hundredths / 100
  }
  return 0.99
}
