/** The cue of a point gives nothing away: held against the real marker over everything that ships. */
import { describe, expect, test } from 'vitest'
import { mark } from '../../../src/lib/marking'
import { cueOf } from '../../../src/lib/view/cue'
import { shippedTopics } from '../marking/shipped'
import { topicFrom } from '../marking/topic'

const foundBy = (topic: (typeof shippedTopics)[number]['topic'], at: number, text: string) => {
  const point = topic.points[at]!
  const [marked] = mark({ ...topic, points: [point] }, text).points
  return { outcome: marked!.outcome, found: marked!.ideas.filter(({ found }) => found).length }
}

describe.each(shippedTopics)('$file, $topic.title', ({ topic }) => {
  test.each(topic.points.map((point, at) => ({ ref: point.ref, at })))(
    'the cue of $ref is no answer',
    ({ at }) => {
      const cue = cueOf(topic.points[at]!, topic)
      const { outcome, found } = foundBy(topic, at, cue)
      expect(outcome, cue).not.toBe('full')
      expect(
        found,
        `${cue} ${JSON.stringify(
          mark({ ...topic, points: [topic.points[at]!] }, cue)
            .points[0]!.ideas.filter((i) => i.found)
            .map((i) => i.idea),
        )}`,
      ).toBeLessThanOrEqual(foundBy(topic, at, topic.title).found)
    },
  )
})

describe('what is asked', () => {
  const [given, list, equation, value, method] = topicFrom('Longshore drift', [
    { text: 'Backwash runs down.' },
    {
      text: 'Name two landforms built by drifting material: a spit or a bar.',
      any: 2,
      ideas: ['spit', 'bar'],
    },
    {
      text: 'Wave speed.',
      equation: 'v = f × λ',
      where: { v: 'wave speed', f: 'frequency', λ: 'wavelength' },
    },
    {
      text: 'The strength of gravity at the surface is 9.8 N/kg.',
      ideas: ['gravity'],
      value: '9.8 N/kg ± 0.2',
    },
    { text: 'Measuring drift with a pebble.', steps: ['mark + pebble', 'place', 'measure'] },
  ]).points
  const title = { title: 'Longshore drift' }
  test.each([
    {
      point: { ...given!, cue: 'How does the water go back?' },
      cue: 'How does the water go back?',
      why: 'an author’s cue stands',
    },
    {
      point: list!,
      cue: 'Name two landforms built by drifting material.',
      why: 'a list keeps its question',
    },
    {
      point: equation!,
      cue: 'Which equation relates wave speed, frequency and wavelength?',
      why: 'quantities',
    },
    {
      point: value!,
      cue: 'The strength of … at the surface is ….',
      why: 'the number and its unit are left out',
    },
    {
      point: method!,
      cue: 'Longshore drift: 3 steps in order. … drift with a ….',
      why: 'steps are counted',
    },
  ])('$why: $cue', ({ point, cue }) => expect(cueOf(point, title)).toBe(cue))
})
