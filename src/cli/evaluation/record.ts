import { FOLDS, decidedOf, type Calibrated } from './calibration'
import { atCoverage, ratio, twoWay } from './measures'

const BINS = 10

/** What was fitted, on what, how it does on questions it has not seen, and the curve: as Markdown. */
export function recordOf({ model, border, unseen }: Calibrated, names: readonly string[]): string {
  const decided = decidedOf(unseen)
  const sets = [...new Set(decided.map(({ set }) => set))]
  return [
    '# How sure is sure',
    '',
    'Made by `npm run -s calibrate -- FILE.jsonl… --write`, from short answers that people marked (SemEval-2013 Task 7: Dzikovska et al. 2013;',
    'SciEntsBank after Nielsen et al. 2008). `sureness` of a point whose ideas were drafted is the probability, by a logistic model with a ridge over the',
    `features below, that the point is said. All figures here are out of fold: ${FOLDS} folds by question, so that no answer is decided by a model that has seen its`,
    'question, and the border comes from the other folds too. `npm run evaluate` on the same files shows a little more than that: the model that ships has seen them.',
    '',
    '| set | answers | accuracy | macro-F1 | correct: precision | recall | surest 60 %: precision of correct | called correct |',
    '| --- | --- | --- | --- | --- | --- | --- | --- |',
    ...sets.map((set) => {
      const own = decided.filter((d) => d.set === set)
      const all = twoWay(own)
      const sure = atCoverage(own, 0.6)
      return `| ${set} | ${all.n} | ${three(all.accuracy)} | ${three(all.macroF1)} | ${three(all.correctPrecision)} | ${three(all.correctRecall)} | ${three(sure.correctPrecision)} | ${(sure.correctShare * 100).toFixed(0)} % |`
    }),
    '',
    '## The curve',
    '',
    'Of the answers with this sureness (above or below the border by so much), so many were marked correct.',
    '',
    '| sureness | answers | mean | marked correct |',
    '| --- | --- | --- | --- |',
    ...curve(unseen.map((u) => ({ p: logistic(u.balance + border), correct: u.correct }))),
    '',
    '## The model',
    '',
    '| feature | weight for one standard deviation |',
    '| --- | --- |',
    ...[...names, 'references (logarithm of their number)'].map(
      (name, i) => `| ${name} | ${(model.weights[i] ?? 0).toFixed(2)} |`,
    ),
    '',
    `Called correct from ${three(logistic(border))} on.`,
    '',
  ].join('\n')
}

function curve(points: readonly { readonly p: number; readonly correct: boolean }[]): string[] {
  return [...new Array<undefined>(BINS)].map((_, bin) => {
    const here = points.filter(({ p }) => Math.min(BINS - 1, Math.floor(p * BINS)) === bin)
    const mean = ratio(
      here.reduce((sum, { p }) => sum + p, 0),
      here.length,
    )
    const right = ratio(here.filter(({ correct }) => correct).length, here.length)
    return `| ${(bin / BINS).toFixed(1)} to ${((bin + 1) / BINS).toFixed(1)} | ${here.length} | ${three(mean)} | ${three(right)} |`
  })
}

const three = (value: number): string => value.toFixed(3)
const logistic = (x: number): number => 1 / (1 + Math.exp(-x))
