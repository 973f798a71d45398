/**
 * npm run -s calibrate:drafted -- FOLDER [--write]
 * Learns from the labelled dumps of a folder what the outcome of a drafted point is weighed by, and prints what it reaches on topics that
 * it has not seen. With --write the model of all topics goes into the marker, with the record beside it. Deterministic. `evaluate` on the
 * same folder shows what the written model does on dumps that it has seen.
 */
import { writeFileSync } from 'node:fs'
import { format, resolveConfig } from 'prettier'
import {
  borderOfDrafted,
  labelledCases,
  learnDrafted,
  measuredAt,
  outOfTopic,
} from './calibration/drafted'
import { reliability } from './calibration/reliability'
import { CliError, run } from './files'

const USAGE = 'usage: npm run -s calibrate:drafted -- FOLDER [--write]'
const CURVE = [0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95]

run(async () => {
  const args = process.argv.slice(2)
  const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--write')
  if (unknown) throw new CliError(`unknown option ${unknown}; ${USAGE}`)
  const [folder, ...more] = args.filter((arg) => !arg.startsWith('--'))
  if (!folder || more.length > 0) throw new CliError(USAGE)

  const cases = labelledCases(folder)
  const weighed = outOfTopic(cases)
  const border = borderOfDrafted(cases, weighed)
  const given = labelledCases(folder, false)
  const own = measuredAt(given, outOfTopic(given, cases), border)
  const topics = new Set(cases.map(({ topic }) => topic)).size
  const lines = [
    `${cases.length} points of ${topics} topics, each by a model of the other topics`,
    'full from   precision   recall   false credit   macro-F1',
    ...[...new Set([...CURVE, border])]
      .sort((a, b) => a - b)
      .map((sure) => {
        const m = measuredAt(cases, weighed, sure)
        return `${sure.toFixed(2)}${sure === border ? ' *' : '  '}         ${m.fullPrecision.toFixed(3)}    ${m.fullRecall.toFixed(3)}         ${(m.falseCredit * 100).toFixed(1)} %      ${m.macroF1.toFixed(3)}`
      }),
    '* the border: the lowest at which precision is .90 and false credit at most 1.5 %',
    `At the border, with the file's ideas where it gives some: precision ${own.fullPrecision.toFixed(3)}, recall ${own.fullRecall.toFixed(3)}, false credit ${(own.falseCredit * 100).toFixed(1)} %, macro-F1 ${own.macroF1.toFixed(3)}`,
    'said full      points   said   full',
    ...reliability(
      weighed.flatMap((p, i) => (p ? [{ p: p[0]!, happened: cases[i]!.label === 'full' }] : [])),
    ).map(
      (b) =>
        `${b.from.toFixed(1)} to ${b.to.toFixed(1)}    ${String(b.count).padStart(7)}   ${b.said.toFixed(3)}   ${b.happened.toFixed(3)}`,
    ),
  ]
  process.stdout.write(`${lines.join('\n')}\n`)
  if (!args.includes('--write')) return
  const number = (x: number) => Number(x.toPrecision(6))
  await written(
    '../lib/marking/3-outcomes/draft-weights.ts',
    `import type { ClassWeights } from './draft-model'

/** Made by src/cli/calibrate-drafted.ts; not edited by hand. DRAFTED.md in this folder says from what. */
/** From this probability on a drafted point is full. */
export const DRAFT_SURE = ${border}
/** One for each of WEIGHED; the weights stand in the order of EVIDENCE, then DRAFT_EVIDENCE. */
export const DRAFT_CLASSES: readonly ClassWeights[] = ${JSON.stringify(
      learnDrafted(cases).map(({ bias, weights }) => ({
        bias: number(bias),
        weights: weights.map(number),
      })),
    )}
`,
    'typescript',
  )
  await written(
    '../lib/marking/3-outcomes/DRAFTED.md',
    `# How a drafted point is weighed

Where an author gave nothing but the text of a point, the rules find the drafted ideas and what clashes with them; whether that is all of
the point, part of it or nothing is weighed: a multinomial logistic model over the evidence of \`likeness.ts\` and \`draft-evidence.ts\`.
Pages of so few statements that they are one answer are judged by the rules alone. Made by
\`npm run calibrate:drafted -- FOLDER --write\` from ${cases.length} labelled points of ${topics} invented topics. What follows is out of
fold: each topic is decided by a model that has seen the other topics only. The border is chosen on all of it.

\`\`\`
${lines.join('\n')}
\`\`\`
`,
    'markdown',
  )
})

async function written(place: string, source: string, parser: 'typescript' | 'markdown') {
  const path = new URL(place, import.meta.url)
  writeFileSync(path, await format(source, { ...(await resolveConfig(path)), parser }))
}
