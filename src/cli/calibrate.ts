/**
 * npm run -s calibrate -- FILE.jsonl… [--write]
 * Fits the model behind `sureness` to short answers that were marked by people, and shows how it does on questions that it has not seen. With
 * --write the numbers and the record go beside the marker. Deterministic.
 */
import { writeFileSync } from 'node:fs'
import { format } from 'prettier'
import { surenessFeatureNames, surenessFeatures } from '../lib/marking'
import { calibrate, type Row } from './evaluation/calibration'
import { readAnswers } from './evaluation/answers'
import { recordOf } from './evaluation/record'
import { CliError, run } from './files'

const FOLDER = 'src/lib/marking/3-outcomes'
const USAGE = 'usage: npm run -s calibrate -- FILE.jsonl… [--write]'

run(async () => {
  const args = process.argv.slice(2)
  const paths = args.filter((arg) => !arg.startsWith('--'))
  if (paths.length === 0 || args.some((arg) => arg.startsWith('--') && arg !== '--write'))
    throw new CliError(USAGE)
  const rows = readAnswers(paths).map(({ set, question, correct, topic, answer }): Row => ({
    set,
    question,
    correct,
    references: surenessFeatures(topic, answer),
  }))
  const result = calibrate(rows)
  const record = recordOf(result, surenessFeatureNames)
  process.stdout.write(`${record}\n`)
  if (!args.includes('--write')) return
  const { mean, deviation, weights, bias } = result.model
  const last = weights.length - 1
  const numbers = {
    mean: mean.slice(0, last).map(short),
    deviation: deviation.slice(0, last).map(short),
    weights: weights.slice(0, last).map(short),
    // The number of references is one for a point of a syllabus: its logarithm is 0.
    bias: short(bias - (weights[last]! * mean[last]!) / deviation[last]!),
    correct: short(1 / (1 + Math.exp(-result.border))),
    manyReferences: short(-weights[last]! / deviation[last]!),
  }
  const source = `// Made by \`npm run calibrate\`: see calibration.md beside it. Never edited by hand.\nexport const calibration = ${JSON.stringify(numbers)}\n`
  const options = { semi: false, singleQuote: true, printWidth: 100 }
  writeFileSync(
    `${FOLDER}/calibration.ts`,
    await format(source, { ...options, parser: 'typescript' }),
  )
  writeFileSync(
    `${FOLDER}/calibration.md`,
    await format(record, { ...options, parser: 'markdown' }),
  )
})

function short(value: number): number {
  return Number(value.toPrecision(4))
}
