import { describe, expect, test } from 'vitest'
import { mark } from '../../../src/lib/marking'
import type { MarkChange } from '../../../src/lib/recall'
import { readIdea, type Topic } from '../../../src/lib/syllabus'
import { coversOf } from '../../../src/lib/view/covers'
import { ideaPieces, plainIdea, stillNeeded } from '../../../src/lib/view/ideas'
import { pointLines, standingOf, stretchesOf } from '../../../src/lib/view/point-lines'
import { check, page, TEXT, topic } from '../../component/marked-example'

const changed = (...changes: [string, MarkChange['outcome']][]) => ({
  ...check,
  changes: changes.map(([ref, outcome]) => ({ ref, outcome, by: 'student', atMs: 1 }) as const),
})
const line = (of: typeof check, ref: string) => pointLines(of, page).find((one) => one.ref === ref)!

describe('the notation read aloud', () => {
  test.each([
    { idea: '"swash"', kind: 'idea', says: 'swash' },
    { idea: 'up (the) beach / up (the) shore', kind: 'idea', says: 'up the beach' },
    { idea: 'trap / catch + sand / shingle', kind: 'step', says: 'trap … sand' },
    { idea: 'oblique(ly)', kind: 'idea', says: 'oblique' },
    { idea: 'r = d / t', kind: 'equation', says: 'r = d / t' },
    { idea: '( not a notation', kind: 'idea', says: '( not a notation' },
  ] as const)('$idea: $says', ({ idea, kind, says }) => {
    expect(plainIdea({ idea, kind })).toBe(says)
  })
})

describe('a point part said', () => {
  test('has the student’s words and the ideas that are not there, in the point’s order', () => {
    expect(line(check, '2.3').pieces).toEqual([
      { said: true, words: 'groyne' },
      { said: true, words: 'traps' },
      { said: false, idea: 'up-drift' },
    ])
  })
  test('of a list needs only the rest of the number', () => {
    const list = {
      ref: '1',
      text: 'Name two.',
      ideas: ['spit', 'bar', 'tombolo'].map(readIdea),
      any: 2,
    }
    const part = { ...page.report.points[2]!, ideas: page.report.points[2]!.ideas }
    expect(stillNeeded(list, part)).toBe(0)
    expect(ideaPieces(TEXT, list, part).every(({ said }) => said)).toBe(true)
    expect(stillNeeded({ ...list, any: 3 }, part)).toBe(1)
  })
})

describe('the mark that stands', () => {
  test('is the student’s, the marker’s stays', () => {
    expect(line(changed(['2.4', 'full']), '2.4')).toMatchObject({
      outcome: 'full',
      by: 'student',
      marker: 'missed',
      why: 'Not said on this page.',
    })
  })
  test('ends a doubt either way; taking it back asks again', () => {
    expect(line(check, '2.5').asks).toBe(true)
    expect(line(changed(['2.5', 'missed']), '2.5').asks).toBe(false)
    expect(line(changed(['2.5', 'full'], ['2.5', null]), '2.5').asks).toBe(true)
  })
  test.each([
    { change: ['2.2', 'full'], role: 'said', words: ['backwash'], why: 'a clash set aside' },
    { change: ['2.2', 'missed'], role: 'clash-words', words: [], why: 'no clash is left' },
    {
      change: ['2.5', 'full'],
      role: 'said',
      words: ['A groyne traps sand.'],
      why: 'credited at the nearest',
    },
    {
      change: ['2.1', 'missed'],
      role: 'said',
      words: [],
      why: 'what does not count is not underlined',
    },
  ] as const)('$change: $why', ({ change: [ref, outcome], role, words }) => {
    const covers = coversOf(page.report, standingOf(changed([ref, outcome])))
    const found = covers.filter((cover) => cover.ref === ref && cover.role === role)
    expect(found.map(({ span }) => TEXT.slice(span.start, span.end))).toEqual(words)
  })
})

describe('the page with its points put in', () => {
  test.each(['page', 'syllabus'] as const)(
    '%s: the text whole, every point once',
    (arrangement) => {
      const stretches = stretchesOf(check, page, arrangement)
      const text = stretches.map((stretch) => (stretch.kind === 'text' ? stretch.segment.text : ''))
      expect(text.join('')).toBe(TEXT)
      const refs = stretches.flatMap((stretch) =>
        stretch.kind === 'point' ? [stretch.line.ref] : [],
      )
      expect([...refs].sort()).toEqual(topic.points.map(({ ref }) => ref))
    },
  )
  test('in a margin a missed point has its caret in the text', () => {
    const carets = (arrangement: 'page' | 'syllabus') =>
      stretchesOf(check, page, arrangement).flatMap((s) => (s.kind === 'caret' ? [s.ref] : []))
    expect(carets('syllabus')).toEqual(['2.4'])
    expect(carets('page')).toEqual([])
  })
  test('an empty page has all its points, in the syllabus’s order', () => {
    const empty: Topic = topic
    const report = mark(empty, '')
    const stretches = stretchesOf(check, { text: '', topic: empty, report }, 'page')
    expect(stretches.map((s) => (s.kind === 'point' ? s.line.ref : s.kind))).toEqual(
      topic.points.map(({ ref }) => ref),
    )
  })
})
