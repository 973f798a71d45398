/** The cue of a point gives nothing away: held against the real marker over everything that ships. */
import { describe, expect, test } from 'vitest'
import { mark, type PointMark } from '../../../src/lib/marking'
import type { Topic } from '../../../src/lib/syllabus'
import { cueOf } from '../../../src/lib/view/cue'
import { shippedTopics } from '../marking/shipped'
import { topicFrom } from '../marking/topic'

const markAlone = (alone: Topic, text: string) => {
  const [{ outcome, ideas }] = mark(alone, text).points as [PointMark]
  return { outcome, found: ideas.filter(({ found }) => found).map(({ idea }) => idea) }
}

describe.each(shippedTopics)('$file, $topic.title', ({ topic }) => {
  test.each(topic.points.map((point) => ({ ref: point.ref, point })))(
    'the cue of $ref is no answer',
    ({ point }) => {
      const alone = { ...topic, points: [point] }
      const cue = cueOf(point, topic)
      const { outcome, found } = markAlone(alone, cue)
      expect(outcome, cue).not.toBe('full')
      // Most cues say nothing of the point: only for the others the title has to be asked as well.
      if (found.length > 0)
        expect(found.length, `${cue} ${found.join(' ')}`).toBeLessThanOrEqual(
          markAlone(alone, topic.title).found.length,
        )
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
