/** Records to keep, and a way to the database behind the store's back. */
import 'fake-indexeddb/auto'
import { clear, createStore, entries, get, set, setMany } from 'idb-keyval'
import { vi } from 'vitest'
import {
  defaultSettings,
  type Check,
  type PaperQuestion,
  type Settings,
} from '../../../src/lib/recall'
import type { Draft, KeptSyllabus, Page } from '../../../src/lib/store'
import { listDrafts } from '../../../src/lib/store'

const raw = createStore('second-ink', 'records')
export const rawGet = (key: string): Promise<unknown> => get(key, raw)
export const rawSet = (key: string, value: unknown): Promise<void> => set(key, value, raw)
export const rawAll = async (): Promise<Map<string, unknown>> => new Map(await entries(raw))
export const rawPut = (all: ReadonlyMap<string, unknown>): Promise<void> => setMany([...all], raw)
export const empty = (): Promise<void> => clear(raw)

export const check = (id: string, more: Partial<Check> = {}): Check => ({
  schema: 1,
  id,
  kind: 'check',
  syllabusId: 'shores',
  topicId: 'drift',
  topicTitle: 'Longshore drift',
  atMs: Date.parse('2027-03-01T12:00:00Z'),
  zone: 'Europe/London',
  marks: [
    { ref: '1.1', outcome: 'full' },
    { ref: '1.2', outcome: 'missed' },
  ],
  changes: [],
  marker: '1.0.0',
  writingMs: 301_250.5,
  words: 42,
  pastes: [{ atMs: Date.parse('2027-03-01T11:58:00Z'), length: 12 }],
  ...more,
})

export const change = (atMs: number, by: 'student' | 'tutor' = 'student') =>
  ({ ref: '1.2', outcome: 'partial', by, atMs }) as const

const wording = (text: string) => ({ words: [{ text, optional: false }], exact: false })

/** Every optional field of every noun is filled, so that a schema that forgets one is caught. */
export const page = (id: string): Page => ({
  schema: 1,
  id,
  text: 'Waves come in at an angle. v = f × λ',
  topic: {
    id: 'drift',
    title: 'Longshore drift',
    caution: 'Ask about the tide before you go.',
    points: [
      {
        ref: '1.1',
        text: 'Waves come in at an angle.',
        cue: 'How do waves come in?',
        ideas: [
          {
            written: '"waves" + at an angle/oblique(ly)',
            parts: [
              { wordings: [{ ...wording('waves'), exact: true }] },
              {
                wordings: [
                  wording('angle'),
                  { words: [{ text: 'oblique', optional: false, suffix: 'ly' }], exact: false },
                ],
              },
            ],
          },
        ],
        any: 1,
        reject: ['Waves come in straight.'],
      },
      {
        ref: '1.2',
        text: 'Speed is frequency times wavelength, 3.0 m/s here.',
        ideas: [],
        equation: {
          written: 'v = f × λ',
          kind: 'algebraic',
          where: { v: [wording('speed')], f: [wording('frequency')] },
        },
        value: { written: '3.0 m/s', number: 3, unit: 'm/s', tolerance: 0.1 },
        steps: [{ written: 'measure', parts: [{ wordings: [wording('measure')] }] }],
      },
    ],
  },
  report: {
    marker: '1.0.0',
    topic: 'drift',
    points: [
      {
        ref: '1.1',
        outcome: 'full',
        ideas: [{ idea: 'waves', kind: 'idea', found: true, spans: [{ start: 0, end: 5 }] }],
        drafted: false,
        offered: false,
        sureness: 0.97,
        why: 'You said that the waves come at an angle.',
      },
      {
        ref: '1.2',
        outcome: 'contradicted',
        ideas: [{ idea: 'v = f × λ', kind: 'equation', found: false, spans: [] }],
        drafted: true,
        nearest: { start: 27, end: 36 },
        offered: true,
        clash: {
          statement: { start: 27, end: 36 },
          words: { start: 31, end: 36 },
          against: 'v = f × λ',
          kind: 'equation',
        },
        sureness: 0.1,
        why: 'The equation is another one.',
      },
    ],
    statements: [{ start: 0, end: 26 }],
    beyond: [{ start: 27, end: 36 }],
  },
})

export const draft = (topicId: string, more: Partial<Draft> = {}): Draft => ({
  schema: 1,
  syllabusId: 'shores',
  topicId,
  text: 'Waves come in',
  startedAtMs: 1000,
  savedAtMs: 2000,
  writingMs: 900,
  pastes: [],
  ...more,
})

export const syllabus = (id: string, more: Partial<KeptSyllabus> = {}): KeptSyllabus => ({
  schema: 1,
  id,
  source: 'title: Shores',
  syllabus: { format: 1, id, title: 'Shores', note: 'Ours', topics: [page('x').topic] },
  addedAtMs: 1000,
  ...more,
})

export const paper = (id: string): PaperQuestion => ({
  schema: 1,
  id,
  syllabusId: 'shores',
  topicId: 'drift',
  day: '2027-03-05',
  source: 'Mock paper 1, question 3',
  marksWon: 2.5,
  marksOutOf: 4,
  question: '3 (b)',
  points: [{ ref: '1.2', lost: true }],
  wentWrong: ['left-out'],
  note: 'I knew it.',
})

export const someSettings: Settings = {
  ...defaultSettings,
  sessionsNeeded: 4,
  exams: [{ syllabusId: 'shores', day: '2027-06-01', title: 'Paper 1', topicIds: ['drift'] }],
  ratings: [{ syllabusId: 'shores', topicId: 'drift', rating: 'hard' }],
}

/** Closes the store's own connection without telling it, as a browser may. */
export async function closeUnderneath(): Promise<void> {
  const transactions = vi.spyOn(IDBDatabase.prototype, 'transaction')
  await listDrafts()
  const own = transactions.mock.contexts[0] as IDBDatabase
  transactions.mockRestore()
  own.close()
}
