import type { DemoTopic } from '../types'

/** Begun twice and left: overdue. */
export const measuringTheShore: DemoTopic = {
  topicId: 'measuring-the-shore',
  lines: {
    '7.1a': 'a quadrat is a frame of known area in which living things are counted',
    '7.1w': 'quadrat = a square frame',
    '7.2a': 'samples are placed at random so that the result is not biased',
    '7.3w': 'for a transect you lay a tape and count what is there',
    '7.4a': 'mean = sum of the readings / number of readings',
    '7.5a': 'gradient = rise / horizontal distance',
    '7.5x': 'gradient = horizontal distance / rise',
    '7.7w': 'repeat readings so you can spot anomalies',
    '7.8a': 'a zero error makes every reading wrong by the same amount',
    '7.9w': 'weigh the dry pebble on a balance, then put it in a measuring cylinder',
    '7.10w': 'put goggles on, add a drop of acid and look for fizzing',
    '7.11a': 'shore work is planned with a tide table and begins while the tide is falling',
    '7.11x': 'shore work begins while the tide is rising',
  },
  pages: [
    { daysAgo: 28, at: '17:10', minutes: 8, says: '7.1w 7.4a 7.5x 7.11x' },
    {
      daysAgo: 15,
      at: '16:50',
      minutes: 8,
      says: '7.1a 7.2a 7.3w 7.4a 7.5a 7.7w 7.8a 7.9w 7.10w 7.11a',
      changed: { '7.7': 'missed' },
    },
  ],
}
