/** Measures the marker on labelled dumps or on short answers. */
import { evaluateDumps, dumpsAsText } from './evaluation/dumps'
import { evaluateShortAnswers, shortAnswersAsText } from './evaluation/short-answers'
import { CliError } from './files'

const USAGE =
  'usage: npm run -s evaluate -- FOLDER [--drafted] [--learn half] [--json] [--show wrong]  or  --short-answers FILE.jsonl… [--learn K] [--json] [--show wrong]'

/** What the arguments ask for goes to `write`. Throws `CliError` where they do not go together, or a file does not fit. */
export function evaluateCommand(given: readonly string[], write: (text: string) => void): void {
  const args = [...given]
  const show = args.indexOf('--show')
  if (show >= 0 && args[show + 1] !== 'wrong')
    throw new CliError(`--show is followed by the word wrong; ${USAGE}`)
  if (show >= 0) args.splice(show, 2)
  const learnAt = args.indexOf('--learn')
  const learn = learnAt < 0 ? 0 : args[learnAt + 1] === 'half' ? 'half' : Number(args[learnAt + 1])
  if (learnAt >= 0 && learn !== 'half' && !(Number.isInteger(learn) && learn >= 1))
    throw new CliError(`--learn is followed by a whole number from 1 on, or half; ${USAGE}`)
  if (learnAt >= 0) args.splice(learnAt, 2)
  const flags = new Set(args.filter((arg) => arg.startsWith('--')))
  const paths = args.filter((arg) => !arg.startsWith('--'))
  for (const flag of flags) {
    if (!['--json', '--drafted', '--short-answers'].includes(flag))
      throw new CliError(`unknown option ${flag}; ${USAGE}`)
  }
  if (paths.length === 0) throw new CliError(USAGE)
  const note = (line: string) => process.stderr.write(`${line}\n`)
  const wrong = show >= 0 ? note : undefined

  if (flags.has('--short-answers')) {
    if (flags.has('--drafted'))
      throw new CliError(`short answers are always drafted: leave --drafted out; ${USAGE}`)
    if (learn === 'half')
      throw new CliError(`of short answers a number a question is learnt, not half; ${USAGE}`)
    const sets = evaluateShortAnswers(paths, learn, wrong)
    write(flags.has('--json') ? `${JSON.stringify({ sets })}\n` : shortAnswersAsText(sets))
    return
  }
  if (typeof learn === 'number' && learn > 0)
    throw new CliError(`of labelled dumps half a topic is learnt: --learn half; ${USAGE}`)
  if (paths.length > 1) throw new CliError(`one folder at a time; ${USAGE}`)
  // Without --drafted both are printed: with the file's ideas, and with every point drafted from its text.
  if (flags.has('--json')) {
    write(
      `${JSON.stringify(evaluateDumps(paths[0]!, flags.has('--drafted'), learn === 'half', wrong).json)}\n`,
    )
    return
  }
  for (const drafted of flags.has('--drafted') ? [true] : [false, true]) {
    write(dumpsAsText(evaluateDumps(paths[0]!, drafted, learn === 'half', wrong), drafted))
  }
}
