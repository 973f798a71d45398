import type { Outcome } from '../../lib/marking'

export const OUTCOMES: readonly Outcome[] = ['full', 'partial', 'missed', 'contradicted']

/** One point of one labelled dump, as marked. */
export interface Marked {
  readonly topic: string
  readonly style: string
  readonly label: Outcome
  readonly outcome: Outcome
  readonly offered: boolean
}

export type Confusion = Readonly<Record<Outcome, Readonly<Record<Outcome, number>>>>

export interface Measures {
  readonly points: number
  /** By label, then by outcome. */
  readonly confusion: Confusion
  readonly fullPrecision: number
  readonly fullRecall: number
  /** Share of all points that are labelled missed or contradicted and marked full. */
  readonly falseCredit: number
  readonly contradictedRecall: number
  /** Mean of the four outcomes' F1. */
  readonly macroF1: number
  /** Share of all points offered to the student under rule 1. */
  readonly offered: number
}

/** 0 where there is nothing to divide by. */
export function ratio(part: number, whole: number): number {
  return whole === 0 ? 0 : part / whole
}

export function measure(marked: readonly Marked[]): Measures {
  const row = () => Object.fromEntries(OUTCOMES.map((o) => [o, 0])) as Record<Outcome, number>
  const confusion = Object.fromEntries(OUTCOMES.map((o) => [o, row()])) as Record<
    Outcome,
    Record<Outcome, number>
  >
  for (const { label, outcome } of marked) confusion[label][outcome] += 1
  const labelled = (o: Outcome) => OUTCOMES.reduce((sum, out) => sum + confusion[o][out], 0)
  const given = (o: Outcome) => OUTCOMES.reduce((sum, label) => sum + confusion[label][o], 0)
  const f1 = OUTCOMES.map((o) => ratio(2 * confusion[o][o], labelled(o) + given(o)))
  return {
    points: marked.length,
    confusion,
    fullPrecision: ratio(confusion.full.full, given('full')),
    fullRecall: ratio(confusion.full.full, labelled('full')),
    falseCredit: ratio(confusion.missed.full + confusion.contradicted.full, marked.length),
    contradictedRecall: ratio(confusion.contradicted.contradicted, labelled('contradicted')),
    macroF1: ratio(
      f1.reduce((a, b) => a + b, 0),
      f1.length,
    ),
    offered: ratio(marked.filter((m) => m.offered).length, marked.length),
  }
}

/** Two-way decisions on short answers, each with how sure the marker was. */
export interface Decided {
  readonly set: string
  readonly correct: boolean
  readonly called: boolean
  /** 0 (a coin's toss) and up: how far from the border. */
  readonly margin: number
}

export interface TwoWay {
  readonly n: number
  readonly accuracy: number
  readonly macroF1: number
  readonly correctPrecision: number
  readonly correctRecall: number
}

export function twoWay(decided: readonly Decided[]): TwoWay {
  const count = (correct: boolean, called: boolean) =>
    decided.filter((d) => d.correct === correct && d.called === called).length
  const [tp, fp, fn, tn] = [
    count(true, true),
    count(false, true),
    count(true, false),
    count(false, false),
  ]
  return {
    n: decided.length,
    accuracy: ratio(tp + tn, decided.length),
    macroF1: (ratio(2 * tp, 2 * tp + fp + fn) + ratio(2 * tn, 2 * tn + fp + fn)) / 2,
    correctPrecision: ratio(tp, tp + fp),
    correctRecall: ratio(tp, tp + fn),
  }
}

export const COVERAGES = [0.6, 0.7, 0.8, 0.9] as const

/** The same when only the surest share is decided and the rest left open. Ties keep the file's order. */
export function atCoverage(decided: readonly Decided[], coverage: number) {
  const surest = [...decided]
    .sort((a, b) => b.margin - a.margin)
    .slice(0, Math.round(decided.length * coverage))
  const { accuracy, correctPrecision } = twoWay(surest)
  return {
    coverage,
    accuracy,
    correctPrecision,
    correctShare: ratio(surest.filter((d) => d.called).length, surest.length),
  }
}
