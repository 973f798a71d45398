/** A marked check small enough to know by heart: one point for each mark, and one that the marker is not sure of. */
import type { Outcome, PointMark, Report, Span } from '../../src/lib/marking'
import type { Check } from '../../src/lib/recall'
import type { Page } from '../../src/lib/store'
import { readIdea, type Point, type Topic } from '../../src/lib/syllabus'

export const TEXT = `Swash carries sand up the beach.

The backwash runs up. A groyne traps sand.
<b>Gulls</b> like chips.`

const points: Point[] = [
  point('2.1', 'Swash carries material up the beach.', [
    'swash',
    'up (the) beach / up (the) shore',
  ]),
  point('2.2', 'Backwash runs down under gravity.', ['backwash', 'down', 'gravity']),
  point('2.3', 'A groyne traps material on its up-drift side.', [
    'groyne',
    'trap / catch',
    'up-drift',
  ]),
  point('2.4', 'Behind a spit the water is sheltered.', ['sheltered']),
  point('2.5', 'Drift moves material along the shore.', ['along (the) shore']),
]

export const topic: Topic = {
  id: 'drift',
  title: 'Longshore <i>drift</i>',
  caution: 'Check the tide table.',
  points,
}

const marks: PointMark[] = [
  mark('2.1', 'full', [found('swash', 'Swash'), found('up (the) beach', 'up the beach')], {
    why: 'You said all of it.',
  }),
  mark(
    '2.2',
    'contradicted',
    [found('backwash', 'backwash'), unfound('down'), unfound('gravity')],
    {
      clash: {
        statement: at('The backwash runs up.'),
        words: at('runs up'),
        against: 'runs down',
        kind: 'opposite',
      },
      why: 'You wrote “runs up”; the syllabus has the opposite.',
    },
  ),
  mark('2.3', 'partial', [found('groyne', 'groyne'), found('trap', 'traps'), unfound('up-drift')], {
    why: 'You said: groyne; trap. You did not say: up-drift.',
  }),
  mark('2.4', 'missed', [unfound('sheltered')], { why: 'Not said on this page.' }),
  mark('2.5', 'missed', [unfound('along (the) shore')], {
    offered: true,
    nearest: at('A groyne traps sand.'),
    why: 'Not clearly said.',
  }),
]

const report: Report = {
  marker: '1.0.0',
  topic: topic.id,
  points: marks,
  statements: [
    at('Swash carries sand up the beach.'),
    at('The backwash runs up.'),
    at('A groyne traps sand.'),
    at('<b>Gulls</b> like chips.'),
  ],
  beyond: [at('<b>Gulls</b> like chips.')],
}

export const page: Page = { schema: 1, id: 'one', text: TEXT, topic, report }

export const check: Check = {
  schema: 1,
  id: 'one',
  kind: 'check',
  syllabusId: 'shores',
  topicId: topic.id,
  topicTitle: topic.title,
  atMs: Date.parse('2027-03-02T16:40:00Z'),
  zone: 'UTC',
  marks: marks.map(({ ref, outcome }) => ({ ref, outcome })),
  changes: [],
  marker: '1.0.0',
  writingMs: 720_000,
  words: 16,
  pastes: [{ atMs: 1, length: 120 }],
}

function point(ref: string, text: string, ideas: string[]): Point {
  return { ref, text, ideas: ideas.map(readIdea) }
}

function at(words: string): Span {
  const start = TEXT.indexOf(words)
  return { start, end: start + words.length }
}

function found(idea: string, words: string) {
  return { idea, kind: 'idea', found: true, spans: [at(words)] } as const
}

function unfound(idea: string) {
  return { idea, kind: 'idea', found: false, spans: [] } as const
}

function mark(
  ref: string,
  outcome: Outcome,
  ideas: PointMark['ideas'],
  more: Partial<PointMark> & { why: string },
): PointMark {
  return { ref, outcome, ideas, drafted: false, offered: false, sureness: 0.5, ...more }
}
