/**
 * npm run -s calibrate -- FILE.jsonl… [--write]
 * Learns what the sureness of a drafted point is made of from short answers, and prints what it reaches out of fold: every question is
 * marked by a model that has seen none of its answers. With --write the model of all questions goes into the marker, with the record
 * beside it. Deterministic. `evaluate` on the same files shows what the written model does on answers that it has seen.
 */
import { writeFileSync } from 'node:fs'
import { format, resolveConfig } from 'prettier'
import { atCoverage, COVERAGES, twoWay, type Decided } from './evaluation/measures'
import { marginOf } from './evaluation/short-answers'
import { answersFrom, foldsBy, learnFrom, surenessOf } from './calibration/short-answers'
import { examplesOf, learnLearning, MARKED, outOfFold } from './calibration/learning'
import { brierScore, logLoss, reliability } from './calibration/reliability'
import { EVIDENCE } from '../lib/marking'
import { CliError, run } from './files'

const USAGE = 'usage: npm run -s calibrate -- FILE.jsonl… [--write]'
const FOLDS = 10
/** The border once a question has been learnt: nearer to a half, because its own threshold is known. */
const AFTER_LEARNING = 0.46

run(() => {
  const args = process.argv.slice(2)
  const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--write')
  if (unknown) throw new CliError(`unknown option ${unknown}; ${USAGE}`)
  const paths = args.filter((arg) => !arg.startsWith('--'))
  if (paths.length === 0) throw new CliError(USAGE)

  const answers = answersFrom(paths)
  const fold = foldsBy(answers, ({ question }) => question, FOLDS)
  const sureness = new Array<number>(answers.length)
  for (let f = 0; f < FOLDS; f += 1) {
    const model = learnFrom(answers.filter((_, i) => fold[i] !== f))
    answers.forEach((answer, i) => {
      if (fold[i] === f) sureness[i] = surenessOf(model, answer)
    })
  }
  const border = borderOf(answers.map(({ set, correct }, i) => ({ set, correct, p: sureness[i]! })))
  const lines = recordOf(
    answers.map(({ set, correct }, i) => ({ set, correct, p: sureness[i]! })),
    border,
  )
  const examples = examplesOf(
    answers.map((answer, i) => ({ ...answer, sureness: sureness[i]!, fold: fold[i]! })),
  )
  const learnt = outOfFold(examples, FOLDS)
  for (const count of MARKED) {
    lines.push(`After ${count} marked answers a question`)
    for (const set of new Set(answers.map((a) => a.set))) {
      const own = learnt.filter((one) => one.set === set && one.marked === count)
      const { n, macroF1, correctPrecision, correctRecall } = twoWay(decidedAt(own, AFTER_LEARNING))
      lines.push(
        `${set}: ${n} answers, macro-F1 ${macroF1.toFixed(3)}, correct: precision ${correctPrecision.toFixed(3)}, recall ${correctRecall.toFixed(3)}`,
      )
    }
  }
  process.stdout.write(`${lines.join('\n')}\n`)
  if (!args.includes('--write')) return
  const model = learnFrom(answers)
  const [many, several] = model.weights.slice(EVIDENCE.length)
  const number = (x: number) => Number(x.toPrecision(6))
  const learning = learnLearning(examples)
  void written(
    '../lib/marking/3-outcomes/learning-weights.ts',
    `/** Made by src/cli/calibrate.ts; not edited by hand. One weight for each number of learningEvidence. */
export const LEARNING: { readonly bias: number; readonly weights: readonly number[] } = {
  bias: ${number(learning.bias)},
  weights: ${JSON.stringify(learning.weights.map(number))},
}
/** From this sureness on an answer is called correct once marked answers were learnt from. */
export const CORRECT_AFTER_LEARNING = ${AFTER_LEARNING}
`,
    'typescript',
  )
  const source = `/** Made by src/cli/calibrate.ts; not edited by hand. README.md in this folder says from what. */
export const BIAS = ${number(model.bias)}
/** One for each name of EVIDENCE. */
export const WEIGHTS: readonly number[] = ${JSON.stringify(model.weights.slice(0, EVIDENCE.length).map(number))}
/** Where one of several reference answers is enough: for their binary logarithm, and once. */
export const ALTERNATIVES = { many: ${number(many!)}, several: ${number(several!)} } as const
/** From this sureness on a short answer is called correct. */
export const CORRECT = ${border}
`
  void written('../lib/marking/3-outcomes/sureness-weights.ts', source, 'typescript')
  void written(
    '../lib/marking/3-outcomes/README.md',
    `# How sure the marker is

\`sureness\` is the probability that a point is fully said. For a drafted point on a page of so few statements that it is one answer it is
the logistic sum of the evidence that \`likeness.ts\` lists, with the weights of \`sureness-weights.ts\`; \`WEIGHED.md\` tells
of longer pages. Both that file and this one are made by \`npm run calibrate -- FILE.jsonl… --write\`.

Learnt from ${answers.length} short answers to ${new Set(answers.map((a) => a.question)).size} questions of the SemEval-2013 task 7 training data (Dzikovska et al. 2013; SciEntsBank after Nielsen et
al. 2008), each set weighing the same, by logistic regression with an L2 penalty. What follows is out of fold: ${FOLDS} folds by question, so
that every answer is decided by a model that has seen no answer to its question; the border itself is chosen on all
out-of-fold answers.

\`\`\`
${lines.join('\n')}
\`\`\`
`,
    'markdown',
  )
})

interface Sure {
  readonly set: string
  readonly correct: boolean
  readonly p: number
}

/** The border at which the worse of the sets is best. */
function borderOf(all: readonly Sure[]): number {
  const sets = [...new Set(all.map(({ set }) => set))]
  let best = { border: 0.5, value: 0 }
  for (let hundredths = 30; hundredths <= 60; hundredths += 1) {
    const border = hundredths / 100
    const macro = sets.map(
      (set) =>
        twoWay(
          decidedAt(
            all.filter((a) => a.set === set),
            border,
          ),
        ).macroF1,
    )
    const value = Math.min(...macro) + 0.2 * (macro.reduce((a, b) => a + b, 0) / macro.length)
    if (value > best.value) best = { border, value }
  }
  return best.border
}

function decidedAt(all: readonly Sure[], border: number): Decided[] {
  return all.map(({ set, correct, p }) => ({
    set,
    correct,
    called: p >= border,
    margin: marginOf(p, border),
  }))
}

function recordOf(all: readonly Sure[], border: number): string[] {
  const lines = [`Out of fold, called correct from ${border} on`]
  for (const set of new Set(all.map((one) => one.set))) {
    const own = all.filter((one) => one.set === set)
    const decided = decidedAt(own, border)
    const { n, accuracy, macroF1, correctPrecision, correctRecall } = twoWay(decided)
    lines.push(
      `${set}: ${n} answers, accuracy ${accuracy.toFixed(3)}, macro-F1 ${macroF1.toFixed(3)}, correct: precision ${correctPrecision.toFixed(3)}, recall ${correctRecall.toFixed(3)}`,
    )
    for (const share of COVERAGES) {
      const c = atCoverage(decided, share)
      lines.push(
        `  surest ${share * 100} %: accuracy ${c.accuracy.toFixed(3)}, precision of correct ${c.correctPrecision.toFixed(3)}, called correct ${(c.correctShare * 100).toFixed(1)} %`,
      )
    }
  }
  const foretold = all.map(({ p, correct }) => ({ p, happened: correct }))
  lines.push(
    `Brier score ${brierScore(foretold).toFixed(3)}, log loss ${logLoss(foretold).toFixed(3)}`,
    'sureness       answers   said   correct',
    ...reliability(foretold).map(
      (b) =>
        `${b.from.toFixed(1)} to ${b.to.toFixed(1)}    ${String(b.count).padStart(7)}   ${b.said.toFixed(3)}   ${b.happened.toFixed(3)}`,
    ),
  )
  return lines
}

async function written(
  place: string,
  source: string,
  parser: 'typescript' | 'markdown',
): Promise<void> {
  const path = new URL(place, import.meta.url)
  writeFileSync(path, await format(source, { ...(await resolveConfig(path)), parser }))
}
