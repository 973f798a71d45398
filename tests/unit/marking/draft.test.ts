/**
 * What a point asks for where its author gave nothing but its text: the ideas, steps, value or equation that a marker would write beside
 * it. The right-hand side was written down from the text, in the way of written mark schemes (common practice), before it was tried.
 */
import { describe, expect, test } from 'vitest'
import { draftOf } from '$lib/marking/2-ideas/draft'
import { readSyllabus } from '$lib/syllabus'

function draft(text: string, title = 'Untitled') {
  const read = readSyllabus(
    JSON.stringify({
      format: 1,
      title: 'T',
      topics: [{ title, points: [{ ref: '1', text }] }],
    }),
  )
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes))
  const topic = read.syllabus.topics[0]!
  const made = draftOf(topic.points[0]!, topic)
  return {
    ideas: made.ideas.map(({ written }) => written),
    steps: made.steps?.map(({ written }) => written),
    any: made.any,
    value: made.value?.written,
    equation: made.equation?.shown,
  }
}

describe('the thing, what is done with what, and where', () => {
  test.each([
    ['A ferry crosses the strait on a chain.', ['ferry', 'crosses strait', 'chain']],
    [
      'The pilot boards the ship from a launch and guides it into the harbour.',
      ['pilot', 'boards ship', 'launch', 'guides into harbour'],
    ],
    [
      'A lagoon fills when a storm breaks through the bank and floods the land behind it.',
      ['lagoon fills', 'storm breaks through bank', 'floods land'],
    ],
    ['Behind the mole the water is calm.', ['behind mole', 'water', 'calm']],
    ['Weed grows along the wall.', ['weed', 'grows along wall']],
    [
      'The sluice opens at high water, so the level of the dock is higher.',
      ['sluice', 'opens high water', 'level dock higher'],
    ],
    ['Kelp cannot root in loose sand.', ['kelp', 'cannot root in loose sand']],
    [
      'Mud is left where the current slows down as the channel is used up.',
      ['mud', 'left', 'current slows down', 'channel used up'],
    ],
    [
      'A jetty is cheaper, because a rise in the price of stone lowers the demand for walls.',
      ['jetty', 'cheaper', 'rise in price stone', 'lowers demand', 'walls'],
    ],
    ['Hale and Drake put forward the plan in 1577.', ['hale drake', 'put forward plan', '1577']],
    ['The anchor holds better in mud than in gravel.', ['anchor', 'holds better in mud', 'gravel']],
  ])('%s', (text, ideas) => expect(draft(text).ideas).toEqual(ideas))
})

describe('both halves of a contrast, each with its own', () => {
  test.each([
    [
      'The flood stream runs by day and the ebb stream by night.',
      ['flood stream + day', 'ebb stream + night'],
    ],
    [
      'A flag is known mainly by colour and a light mainly by meaning.',
      ['flag + colour', 'light + meaning'],
    ],
  ])('%s', (text, ideas) => expect(draft(text).ideas).toEqual(ideas))
})

test('what the title gives away is left out, unless nothing else is left', () => {
  expect(draft('The tide turns the wheel of a tide mill.', 'Tide mills').ideas).toEqual([
    'turns wheel',
  ])
  expect(draft('Tide mills.', 'Tide mills').ideas).toEqual(['tide mills'])
})

describe('the steps of a method', () => {
  test.each([
    [
      'To sound the channel, drop the lead, then read the mark, then haul the line up.',
      ['drop lead', 'read mark', 'haul line up'],
    ],
    [
      'Sounding the channel: drop the lead, read the mark, haul the line up.',
      ['drop lead', 'read mark', 'haul line up'],
    ],
  ])('%s', (text, steps) => expect(draft(text).steps).toEqual(steps))
  test('two things one after the other are no method', () =>
    expect(draft('The gate opens and then the boat leaves.').steps).toBeUndefined())
})

test('numbers with units, counts of a list and relations are what they are', () => {
  expect(draft('The lock is about 12 m wide.').value).toBe('12 m')
  expect(draft('Name two knots: a bowline, a hitch or a bend.')).toMatchObject({
    any: 2,
    ideas: ['bowline', 'hitch', 'bend'],
  })
  expect(draft('Draught is weight divided by area.').equation).toBe('Draught = weight / area')
})
