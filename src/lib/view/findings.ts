/** What an author should know of a topic's points before anybody is marked by them. The marker is a parameter: it runs in a worker. */
import type { IdeaMark, Outcome, PointMark, Report } from '../marking/types'
import { writeIdea, type Idea, type Point, type Topic, type Wording } from '../syllabus'
import { plainIdea } from './ideas'
import { listed } from './words'

export type Mark = (topic: Topic, text: string) => Report

export type Finding =
  /** Not even written out in its own words is it full. */
  | { readonly kind: 'never-full'; readonly ref: string; readonly why: string }
  /** Its text alone does not say all of its ideas. */
  | { readonly kind: 'text-short'; readonly ref: string; readonly missing: readonly string[] }
  /** The title, which stands above the blank page, says an idea. */
  | { readonly kind: 'given-away'; readonly ref: string; readonly idea: string }
  /** Whoever says one has said the other, both ways. */
  | { readonly kind: 'alike'; readonly ref: string; readonly other: string }
  /** Whoever writes `other` has said this one too. */
  | { readonly kind: 'said-by'; readonly ref: string; readonly other: string }

export interface Examined {
  readonly findings: readonly Finding[]
  /** For each point without ideas of its own those that are drafted from its text, in the notation. */
  readonly drafted: Readonly<Record<string, readonly string[]>>
}

/** Marks each point's own words against the whole topic. */
export function examineTopic(topic: Topic, mark: Mark): Examined {
  const blank = mark(topic, '')
  const drafted = Object.fromEntries(
    blank.points
      .filter((point) => point.drafted)
      .map(({ ref, ideas }) => [ref, ideas.map(({ idea }) => idea)]),
  )
  const byText = new Map(topic.points.map(({ ref, text }) => [ref, mark(topic, text)]))
  const findings = topic.points.flatMap((point, i) => [
    ...fullness(topic, point, markOf(byText.get(point.ref), point.ref), mark),
    ...givenAway(topic.title, point),
    ...likeness(topic.points, i, drafted, (said, ref) => markOf(byText.get(said), ref)?.outcome),
  ])
  return { findings, drafted }
}

const markOf = (report: Report | undefined, ref: string): PointMark | undefined =>
  report?.points.find((point) => point.ref === ref)

function fullness(
  topic: Topic,
  point: Point,
  byText: PointMark | undefined,
  mark: Mark,
): Finding[] {
  const { ref } = point
  if (!byText || byText.outcome === 'full') return []
  const missing = byText.ideas.filter(({ found }) => !found)
  const tries = inOwnWords(point, missing).map((page) => markOf(mark(topic, page), ref))
  if (!tries.some((one) => one?.outcome === 'full'))
    return [{ kind: 'never-full', ref, why: byText.why }]
  // "Name two of …" asks; that its text does not answer is as it should be.
  if (point.any !== undefined || missing.length === 0) return []
  return [{ kind: 'text-short', ref, missing: missing.map(plainIdea) }]
}

/**
 * Pages that should make a point full: all that it asks for, each idea by its first wording, in one statement, in
 * one for each, and beside its text.
 */
function inOwnWords(
  { text, ideas, steps = [], equation, value }: Point,
  missing: readonly IdeaMark[],
): string[] {
  const said = [...ideas, ...steps].map(saidFirst)
  const measured = [equation?.written, value?.written].filter((one) => one !== undefined)
  const all = [...said, ...measured]
  return [
    all.join(' '),
    all.join(', '),
    all.join('.\n'),
    `${text.replace(/[.!?]\s*$/, '')} ${missing.map(plainIdea).join(' ')}`,
    `${text}\n${all.join('\n')}`,
  ]
}

const saidFirst = ({ parts }: Idea): string =>
  parts
    .map(({ wordings }) =>
      (wordings[0]?.words ?? []).map(({ text, suffix = '' }) => text + suffix).join(' '),
    )
    .join(' ')

/** Every part of the idea has a wording whose words all stand in the title. Exact terms and plain ones alike. */
function givenAway(title: string, { ref, ideas }: Point): Finding[] {
  const given = new Set(stems(title))
  const gives = ({ words }: Wording) =>
    words.every(({ text, optional }) => optional || stems(text).every((stem) => given.has(stem)))
  return ideas
    .filter(({ parts }) => parts.every(({ wordings }) => wordings.some(gives)))
    .map(({ written }) => ({
      kind: 'given-away',
      ref,
      idea: plainIdea({ idea: written, kind: 'idea' }),
    }))
}

/** Words without their commonest endings: enough to compare a title with an idea. */
const stems = (text: string): string[] =>
  (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).map((word) =>
    word.length > 4 ? word.replace(/(?:es|s|ed|ing|ly|e)$/, '') : word.replace(/s$/, ''),
  )

/** Each pair is told once, at the later point. */
function likeness(
  points: readonly Point[],
  at: number,
  drafted: Examined['drafted'],
  outcome: (said: string, ref: string) => Outcome | undefined,
): Finding[] {
  const point = points[at]!
  return points.flatMap((other, i): Finding[] => {
    if (i === at) return []
    const makes = outcome(other.ref, point.ref) === 'full'
    const made = outcome(point.ref, other.ref) === 'full'
    const alike = asks(point, drafted) === asks(other, drafted) || (makes && made)
    if (alike) return i < at ? [{ kind: 'alike', ref: point.ref, other: other.ref }] : []
    return makes ? [{ kind: 'said-by', ref: point.ref, other: other.ref }] : []
  })
}

/** What decides the mark of a point, as one text. */
function asks({ ref, ideas, any, steps, equation, value }: Point, drafted: Examined['drafted']) {
  const own = ideas.length > 0 ? ideas.map(writeIdea) : (drafted[ref] ?? [])
  const sorted = own.map((idea) => idea.toLowerCase()).sort()
  return JSON.stringify([
    sorted,
    any ?? sorted.length,
    steps?.map(writeIdea),
    equation?.written,
    value?.written,
  ])
}

/** One finding as a sentence, and what to do. */
export function findingWords(finding: Finding): string {
  switch (finding.kind) {
    case 'never-full':
      return `This point can never be full: even written out in its own words it is not. ${finding.why} Change its ideas, or what loses it.`
    case 'text-short':
      return `Its text alone does not say: ${listed(finding.missing)}. Who learns the text word for word does not get the point: change the text, or leave the idea out.`
    case 'given-away':
      return `The title of the topic gives “${finding.idea}” away: it stands above the blank page, and who repeats it has shown nothing. Ask for something else, or retitle the topic.`
    case 'alike':
      return `It cannot be told apart from ${finding.other}: whoever says one has said the other. Make one point of them, or give each an idea of its own.`
    case 'said-by':
      return `Whoever writes ${finding.other} has said this point too, and gets both for it. Give this one an idea that ${finding.other} does not say.`
  }
}
