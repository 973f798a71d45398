import { mark, type Learned, type MarkedWording } from '../../lib/marking'
import type { Topic } from '../../lib/syllabus'
import { drawn } from './drawn'
import { readLabelledFolder, type LabelledDump } from './labelled'
import { measure, OUTCOMES, type Marked, type Measures } from './measures'

export interface DumpsEvaluated {
  readonly json: Measures & { readonly topics: readonly (Measures & { readonly topic: string })[] }
  readonly styles: readonly (Measures & { readonly style: string })[]
}

/** Marks every `NAME.dumps.json` of a folder against its `NAME.yaml`; `wrong` is told each point marked otherwise than labelled. */
export function evaluateDumps(
  folder: string,
  drafted: boolean,
  /** Learn from half the dumps of each topic, and mark the others. */
  learn: boolean,
  wrong?: (line: string) => void,
): DumpsEvaluated {
  const marked: Marked[] = []
  for (const { name, topic, dumps } of readLabelledFolder(folder)) {
    const asked = drafted ? withoutIdeas(topic) : topic
    const half = learn ? Math.floor(dumps.length / 2) : 0
    for (const parted of drawn(dumps, () => name, half)) {
      const learned = half > 0 ? changesIn(asked, parted.drawn) : {}
      const rest = half > 0 ? parted.rest : dumps
      for (const dump of rest) marked.push(...markDump(name, asked, dump, learned, wrong))
    }
  }
  const groups = (key: 'topic' | 'style') =>
    [...new Set(marked.map((m) => m[key]))].map((value) => ({
      value,
      ...measure(marked.filter((m) => m[key] === value)),
    }))
  return {
    json: {
      ...measure(marked),
      topics: groups('topic').map(({ value, ...m }) => ({ topic: value, ...m })),
    },
    styles: groups('style').map(({ value, ...m }) => ({ style: value, ...m })),
  }
}

function markDump(
  name: string,
  topic: Topic,
  dump: LabelledDump,
  learned: Learned,
  wrong?: (line: string) => void,
): Marked[] {
  const report = mark(topic, dump.text, { learned })
  return report.points.flatMap((point) => {
    const label = dump.labels[point.ref]
    if (!label) return []
    if (wrong && label.mark !== point.outcome) {
      const ideas = point.ideas.map((i) => `${i.found ? '+' : '-'} ${i.idea}`).join('; ')
      wrong(
        `${name} ${dump.id} ${point.ref}: labelled ${label.mark}, marked ${point.outcome}. ${point.why} [${ideas}] <${label.evidence ?? ''}> ${label.why ?? ''}`,
      )
    }
    return [
      {
        topic: name,
        style: dump.style.split(/[,;:]/)[0]!,
        label: label.mark,
        outcome: point.outcome,
        offered: point.offered,
      },
    ]
  })
}

/** What a student would have changed: the labelled words for a point that was not given, the words it was wrongly given for. */
function changesIn(topic: Topic, dumps: readonly LabelledDump[]): Learned {
  const learned: Record<string, MarkedWording[]> = {}
  for (const { text, labels } of dumps) {
    const { points, statements } = mark(topic, text)
    for (const { ref, outcome, ideas } of points) {
      const label = labels[ref]
      if (!label || (label.mark === 'full') === (outcome === 'full')) continue
      const spans = ideas.flatMap((idea) => idea.spans)
      const used = statements.filter((s) => spans.some((a) => a.start < s.end && s.start < a.end))
      const words =
        label.mark === 'full'
          ? (label.evidence ?? '')
          : text.slice(used[0]?.start ?? 0, used.at(-1)?.end ?? 0)
      if (words.trim() !== '')
        (learned[ref] ??= []).push({ text: words, credited: label.mark === 'full' })
    }
  }
  return learned
}

export function withoutIdeas(topic: Topic): Topic {
  return { ...topic, points: topic.points.map(({ ref, text }) => ({ ref, text, ideas: [] })) }
}

const percent = (share: number) => `${(share * 100).toFixed(1)} %`

export function dumpsAsText({ json, styles }: DumpsEvaluated, drafted: boolean): string {
  const line = (name: string, m: Measures) =>
    `  ${name.padEnd(30)} ${String(m.points).padStart(4)}  full ${m.fullPrecision.toFixed(3)} / ${m.fullRecall.toFixed(3)}  false credit ${percent(m.falseCredit).padStart(6)}  contradicted ${m.contradictedRecall.toFixed(2)}  macro-F1 ${m.macroF1.toFixed(3)}  offered ${percent(m.offered)}`
  const lines = [
    drafted ? 'Every point drafted from its text' : "With the file's ideas",
    `  ${'label \\ outcome'.padEnd(16)}${OUTCOMES.map((o) => o.padStart(14)).join('')}`,
    ...OUTCOMES.map(
      (label) =>
        `  ${label.padEnd(16)}${OUTCOMES.map((o) => String(json.confusion[label][o]).padStart(14)).join('')}`,
    ),
    '  (full: precision / recall)',
    line('all', json),
    ...json.topics.map((t) => line(t.topic, t)),
    ...styles.map((s) => line(s.style, s)),
  ]
  return `${lines.join('\n')}\n\n`
}
