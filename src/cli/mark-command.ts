/** Marks dumps in a terminal with the marker of the app. */
import { mark, MARKER, type Report } from '../lib/marking'
import type { Topic } from '../lib/syllabus'
import { CliError, readText, readTopic } from './files'
import { isFolder, markFolder } from './mark-folder'

const USAGE =
  'usage: npm run -s mark -- SYLLABUS.yaml TOPIC-ID DUMP.txt [DUMP2.txt …] [--json], or SYLLABUS.yaml TOPIC-ID FOLDER'

const MARGIN = { full: '✓', partial: '◐', missed: '‸', contradicted: '≠' } as const

/** What the arguments ask for goes to `write`. Throws `CliError` where a file, topic or path is bad. */
export async function markCommand(
  args: readonly string[],
  write: (text: string) => void,
): Promise<void> {
  const json = args.includes('--json')
  const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--json')
  if (unknown) throw new CliError(`unknown option ${unknown}; ${USAGE}`)
  const [syllabus, topicId, ...dumps] = args.filter((arg) => !arg.startsWith('--'))
  if (!syllabus || !topicId || dumps.length === 0) throw new CliError(USAGE)

  const topic = readTopic(syllabus, topicId)
  const [only, ...more] = dumps
  if (only && more.length === 0 && !json && isFolder(only)) {
    write(await markFolder(topic, only))
    return
  }
  // All files are read before the first is marked: a bad one leaves no half of an answer.
  const texts = dumps.map((path) => ({ path, text: readText(path) }))
  for (const { path, text } of texts) {
    const report = mark(topic, text)
    write(json ? `${JSON.stringify(asJson(path, report))}\n` : asText(path, topic, text, report))
  }
}
/** The shape that `--json` prints, one object a dump: idea spans are given from the first to the last word. */
function asJson(dump: string, report: Report) {
  return {
    dump,
    topic: report.topic,
    points: report.points.map(({ ref, outcome, ideas, nearest, clash, offered, why }) => ({
      ref,
      outcome,
      ideas: ideas.map(({ idea, found, spans }) => ({
        idea,
        found,
        start: spans[0]?.start ?? null,
        end: spans[spans.length - 1]?.end ?? null,
      })),
      nearest: nearest ?? null,
      clash: clash ? { ...clash.words, kind: clash.kind } : null,
      offered,
      why,
    })),
    beyond: report.beyond,
    marker: MARKER,
  }
}

function asText(dump: string, topic: Topic, text: string, report: Report): string {
  const count = (outcome: keyof typeof MARGIN) =>
    report.points.filter((p) => p.outcome === outcome).length
  const quote = (start: number, end: number) => `“${text.slice(start, end).replace(/\s+/g, ' ')}”`
  const lines = [
    `${dump}: ${topic.title}`,
    `${count('full')} of ${report.points.length} points full; ${count('partial')} part said; ${count('missed')} missed; ${count('contradicted')} say the opposite.`,
    '',
  ]
  for (const { ref, outcome, ideas, nearest, clash, why } of report.points) {
    lines.push(`${MARGIN[outcome]} ${ref}  ${outcome}. ${why}`)
    for (const { idea, found, spans } of ideas) {
      const said = spans.map(({ start, end }) => quote(start, end)).join(' … ')
      lines.push(`    ${found ? '+' : '-'} ${idea}${said ? `  ${said}` : ''}`)
    }
    if (clash) lines.push(`    ≠ ${quote(clash.statement.start, clash.statement.end)}`)
    else if (nearest && outcome !== 'full')
      lines.push(`    nearest: ${quote(nearest.start, nearest.end)}`)
  }
  if (report.beyond.length > 0) {
    lines.push('', 'Not on this syllabus:')
    for (const { start, end } of report.beyond) lines.push(`  ${quote(start, end)}`)
  }
  return `${lines.join('\n')}\n\n`
}
