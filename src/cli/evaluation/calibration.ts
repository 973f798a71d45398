import { foldOf } from './folds'
import { fit, logitOf, type Model } from './logistic'
import { twoWay, type Decided } from './measures'

/** One answer: the features of each reference, undefined where nothing comes near it. */
export interface Row {
  readonly set: string
  readonly question: string
  readonly correct: boolean
  readonly references: readonly (readonly number[] | undefined)[]
}

/** An answer decided by a model that has not seen its question. */
export interface Unseen {
  readonly set: string
  readonly correct: boolean
  /** Log-odds above the border that the other folds set. */
  readonly balance: number
}

export interface Calibrated {
  readonly model: Model
  /** Log-odds from which an answer is called correct. */
  readonly border: number
  readonly unseen: readonly Unseen[]
}

export const FOLDS = 5
const RIDGE = 5
/** Both corpora weigh the same, whatever their size. */
const WEIGHT = 4000
const ROUNDS = 3

interface Ready {
  readonly set: string
  readonly question: string
  readonly correct: boolean
  readonly options: readonly (readonly number[])[]
}

/** Fits all data, and, for the figures, each fold's complement: no answer is decided by a model that saw its question. */
export function calibrate(rows: readonly Row[]): Calibrated {
  const size = rows.flatMap(({ references }) => references).find(Boolean)?.length ?? 0
  const ready = rows.map((row) => withReferences(row, size))
  const unseen = [...new Array<undefined>(FOLDS)].flatMap((_, fold) => {
    const others = ready.filter(({ question }) => foldOf(question, FOLDS) !== fold)
    const { model, border } = fitted(others)
    return ready
      .filter(({ question }) => foldOf(question, FOLDS) === fold)
      .map((row) => ({
        set: row.set,
        correct: row.correct,
        balance: logitOf(model, nearest(model, row)) - border,
      }))
  })
  return { ...fitted(ready), unseen }
}

function withReferences({ set, question, correct, references }: Row, size: number): Ready {
  const many = Math.log(Math.max(1, references.length))
  return {
    set,
    question,
    correct,
    options: references.map((f) => [...(f ?? new Array<number>(size).fill(0)), many]),
  }
}

// The reference that the answer comes nearest to is not known beforehand: first the most alike, then what the model says.
function fitted(rows: readonly Ready[]): { model: Model; border: number } {
  const sizes = new Map<string, number>()
  for (const { set } of rows) sizes.set(set, (sizes.get(set) ?? 0) + 1)
  let model: Model | undefined
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = model
    model = fit(
      rows.map((row) => ({
        features: before ? nearest(before, row) : mostAlike(row),
        right: row.correct,
        weight: WEIGHT / sizes.get(row.set)!,
      })),
      RIDGE,
    )
  }
  return { model: model!, border: bestBorder(rows, model!) }
}

const mostAlike = ({ options }: Ready): readonly number[] =>
  options.reduce((best, option) => (option[0]! > best[0]! ? option : best))

const nearest = (model: Model, { options }: Ready): readonly number[] =>
  options.reduce((best, option) => (logitOf(model, option) > logitOf(model, best) ? option : best))

// The border with the best macro-F1 over the sets together.
function bestBorder(rows: readonly Ready[], model: Model): number {
  const scored = rows.map((row) => ({ ...row, logit: logitOf(model, nearest(model, row)) }))
  const sets = [...new Set(rows.map(({ set }) => set))]
  let best = { border: 0, value: -1 }
  for (let step = -30; step <= 30; step += 1) {
    const border = step * 0.05
    const value = sets.reduce(
      (sum, set) =>
        sum +
        twoWay(
          scored
            .filter((row) => row.set === set)
            .map(({ correct, logit }) => ({ set, correct, called: logit >= border, margin: 0 })),
        ).macroF1,
      0,
    )
    if (value > best.value) best = { border, value }
  }
  return best.border
}

export function decidedOf(unseen: readonly Unseen[]): Decided[] {
  return unseen.map(({ set, correct, balance }) => ({
    set,
    correct,
    called: balance >= 0,
    margin: Math.abs(balance),
  }))
}
