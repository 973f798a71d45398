/**
 * npm run -s calibrate:weights -- FOLDER [--write]
 * Learns from the labelled dumps of a folder what the outcome of a point is weighed by, and prints what it reaches on topics that it has
 * not seen. With --write the models of all topics go into the marker, with the record beside them. Deterministic. `evaluate` on the same
 * folder shows what the written models do on dumps that they have seen.
 */
import { writeFileSync } from 'node:fs'
import { format, resolveConfig } from 'prettier'
import type { ClassWeights } from '../lib/marking'
import { reliability } from './calibration/reliability'
import {
  bordersOf,
  labelledCases,
  learnWeights,
  measuredAt,
  outOfTopic,
  type Borders,
  type Foretold,
  type LabelledCase,
} from './calibration/weighed'
import { CliError, run } from './files'

const USAGE = 'usage: npm run -s calibrate:weights -- FOLDER [--write]'
const CURVE = [0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95]

run(async () => {
  const args = process.argv.slice(2)
  const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--write')
  if (unknown) throw new CliError(`unknown option ${unknown}; ${USAGE}`)
  const [folder, ...more] = args.filter((arg) => !arg.startsWith('--'))
  if (!folder || more.length > 0) throw new CliError(USAGE)

  const drafts = labelledCases(folder)
  const given = labelledCases(folder, false)
  const foretold = { drafts: outOfTopic(drafts), given: outOfTopic(given, drafts) }
  const borders = bordersOf(drafts, given, foretold)
  const topics = new Set(drafts.map(({ topic }) => topic)).size
  const lines = [
    `${drafts.length} points of ${topics} topics, each by a model of the other topics; * the border`,
    'Every point drafted from its text',
    ...curve(borders.drafted, (drafted) =>
      measuredAt(drafts, foretold.drafts, { ...borders, drafted }),
    ),
    ...reliabilityOf(drafts, foretold.drafts, true),
    "With the file's ideas where it gives some",
    ...curve(borders.authored, (authored) =>
      measuredAt(given, foretold.given, { ...borders, authored }),
    ),
    ...reliabilityOf(given, foretold.given, false),
  ]
  process.stdout.write(`${lines.join('\n')}\n`)
  if (!args.includes('--write')) return
  await written(
    '../lib/marking/3-outcomes/draft-weights.ts',
    sourceOf(borders, learnWeights(drafts, true), learnWeights(given, false)),
    'typescript',
  )
  await written(
    '../lib/marking/3-outcomes/WEIGHED.md',
    `# How a point is weighed

The rules find the ideas of a point and what clashes with them. Where an author gave nothing but the text of the point, whether that is all
of it, part of it or nothing is weighed: a multinomial logistic model over the evidence of \`likeness.ts\` and \`draft-evidence.ts\`. Of a
point with ideas of its author's only one thing is weighed: whether the rest is said in other words, where half of them and more were found
and no exact term or value is missing. Pages of so few statements that they are one answer are judged by the rules alone. Made by
\`npm run calibrate:weights -- FOLDER --write\` from ${drafts.length} labelled points of ${topics} invented topics. What follows is out of
fold: each topic is decided by models that have seen the other topics only. The borders are chosen on all of it: the lowest at which
precision is .90 and false credit at most 1.5 % where all is drafted, .955 and 1 % with the file's ideas.

\`\`\`
${lines.join('\n')}
\`\`\`
`,
    'markdown',
  )
})

type Reached = ReturnType<typeof measuredAt>

function curve(border: number, at: (border: number) => Reached): string[] {
  return [
    'full from   precision   recall   false credit   macro-F1',
    ...[...new Set([...CURVE, border])]
      .sort((a, b) => a - b)
      .map((sure) => {
        const m = at(sure)
        return `${sure.toFixed(2)}${sure === border ? ' *' : '  '}         ${m.fullPrecision.toFixed(3)}    ${m.fullRecall.toFixed(3)}         ${(m.falseCredit * 100).toFixed(1)} %      ${m.macroF1.toFixed(3)}`
      }),
  ]
}

function reliabilityOf(
  cases: readonly LabelledCase[],
  foretold: Foretold,
  drafted: boolean,
): string[] {
  const own = cases.flatMap((one, i) => {
    const p = foretold[i]
    return p && one.drafted === drafted ? [{ p: p[0]!, happened: one.label === 'full' }] : []
  })
  return [
    'said full      points   said   full',
    ...reliability(own).map(
      (b) =>
        `${b.from.toFixed(1)} to ${b.to.toFixed(1)}    ${String(b.count).padStart(7)}   ${b.said.toFixed(3)}   ${b.happened.toFixed(3)}`,
    ),
  ]
}

function classes(models: readonly ClassWeights[]): string {
  const number = (x: number) => Number(x.toPrecision(6))
  return JSON.stringify(
    models.map(({ bias, weights }) => ({ bias: number(bias), weights: weights.map(number) })),
  )
}

function sourceOf(
  borders: Borders,
  drafted: readonly ClassWeights[],
  authored: readonly ClassWeights[],
): string {
  return `import type { ClassWeights } from './draft-model'

// Made by src/cli/calibrate-weights.ts; not edited by hand. WEIGHED.md in this folder says from what.
/** From this probability on a drafted point is full. */
export const DRAFT_SURE = ${borders.drafted}
/** The same for a point with ideas of its author's, the rest of which may be said in other words. */
export const AUTHORED_SURE = ${borders.authored}
/** One for each of WEIGHED; the weights stand in the order of EVIDENCE, then DRAFT_EVIDENCE. */
export const DRAFT_CLASSES: readonly ClassWeights[] = ${classes(drafted)}
export const AUTHORED_CLASSES: readonly ClassWeights[] = ${classes(authored)}
`
}

async function written(place: string, source: string, parser: 'typescript' | 'markdown') {
  const path = new URL(place, import.meta.url)
  writeFileSync(path, await format(source, { ...(await resolveConfig(path)), parser }))
}
