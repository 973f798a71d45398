import { describe, expect, test } from 'vitest'
import { mark, type MarkedWording } from '../../../src/lib/marking'
import { topicFrom } from './topic'

const topic = topicFrom('Coasts', [
  { text: 'Groynes trap sand on the updrift side.', ideas: ['groyne', 'trap + sand', 'updrift'] },
  { text: 'A spit grows where the coast turns inland.', ideas: ['spit', 'coast + turns'] },
])
const CREDITED = 'The wooden walls hold the beach back where the drift comes from.'
const accepts = (text: string): MarkedWording[] => [{ text, credited: true }]
const refuses = (text: string): MarkedWording[] => [{ text, credited: false }]
const FULL = 'Groynes trap sand on the updrift side.'

describe('what was marked of a point before', () => {
  const cases: {
    why: string
    says: string
    learned?: Record<string, MarkedWording[]>
    outcome: string
    offered?: boolean
  }[] = [
    { why: 'nothing learnt', says: CREDITED, outcome: 'missed' },
    { why: 'accepted', says: CREDITED, learned: { '1': accepts(CREDITED) }, outcome: 'full' },
    {
      why: 'accepted, in another order of small words',
      says: 'wooden walls hold back the beach, where drift comes from',
      learned: { '1': accepts(CREDITED) },
      outcome: 'full',
    },
    {
      why: 'accepted, but denied here',
      says: 'The wooden walls do not hold the beach back where the drift comes from.',
      learned: { '1': accepts('Wooden walls hold the beach back.') },
      outcome: 'missed',
    },
    {
      why: 'accepted, but doubted here',
      says: `Maybe ${CREDITED.toLowerCase()}`,
      learned: { '1': accepts(CREDITED) },
      outcome: 'missed',
    },
    {
      why: 'accepted for another point',
      says: CREDITED,
      learned: { '2': accepts(CREDITED) },
      outcome: 'missed',
    },
    {
      why: 'accepted and refused alike: doubt is a miss',
      says: CREDITED,
      learned: { '1': [...accepts(CREDITED), ...refuses(CREDITED)] },
      outcome: 'missed',
    },
    {
      why: 'refused, and so offered',
      says: FULL,
      learned: { '1': refuses(FULL) },
      outcome: 'partial',
      offered: true,
    },
    {
      why: 'refused in quite other words',
      says: FULL,
      learned: { '1': refuses('Groynes are made of wood.') },
      outcome: 'full',
    },
  ]
  test.each(cases)('$why: $says', ({ says, learned, outcome, offered }) => {
    const [point] = mark(topic, says, learned ? { learned } : {}).points
    expect(point!.outcome).toBe(outcome)
    if (offered !== undefined) expect(point!.offered).toBe(offered)
  })

  test('an accepted statement is not told to be on no syllabus', () => {
    expect(mark(topic, CREDITED).beyond).toHaveLength(1)
    expect(mark(topic, CREDITED, { learned: { '1': accepts(CREDITED) } }).beyond).toEqual([])
  })

  test('it never spreads to other points', () => {
    const page = `${CREDITED} A spit grows.`
    const before = mark(topic, page).points[1]
    expect(mark(topic, page, { learned: { '1': accepts(CREDITED) } }).points[1]).toEqual(before)
  })
})
