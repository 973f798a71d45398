import type { DemoTopic } from '../types'

/** Checked today with gaps, so that the gaps of today are to be seen. */
export const lifeBetweenTheTides: DemoTopic = {
  topicId: 'life-between-the-tides',
  lines: {
    '6.1a': 'the upper shore is uncovered for the longest time',
    '6.2a': 'dangers at low water: drying out, getting too hot or too cold, birds that hunt it',
    '6.2w': 'animals can dry out at low tide',
    '6.3a': 'a limpet clamps its shell down on the rock so it does not dry out',
    '6.4a':
      'barnacles shut their plates in air and feed with feathery legs when they are under water',
    '6.4w': 'barnacles shut their plates in air',
    '6.5a':
      'a holdfast fixes seaweed to the rock but unlike a root it does not take in water or minerals',
    '6.5x': 'the holdfast takes in water',
    '6.6a': 'gas bladders lift some seaweeds up towards the light',
    '6.7a': 'seaweeds are producers, they make their own food by photosynthesis',
    '6.7w': 'seaweeds are producers',
    '6.8a': 'limpets graze on algae, crabs eat limpets, and gulls eat crabs',
    '6.9a':
      'the arrows of a food chain point from the food to the eater and show where the energy goes',
    '6.9x': 'the arrows point from the eater to the food',
    '6.10a': 'an adaptation is a feature that helps a living thing to survive where it lives',
    '6.10w': 'an adaptation helps an animal survive',
    '6.11a': 'seaweeds compete for space and light',
    '6.12w': 'a rock pool stays wet at low tide',
    z1: 'starfish have five arms and can grow one back',
  },
  pages: [
    { daysAgo: 40, at: '17:00', minutes: 6, says: '6.1a 6.2w 6.5x 6.7w 6.8a 6.9x z1' },
    { daysAgo: 39, at: '16:25', minutes: 8, says: '6.1a 6.2a 6.3a 6.4w 6.6a 6.7w 6.8a 6.9x 6.10w' },
    {
      daysAgo: 17,
      at: '17:35',
      minutes: 9,
      says: '6.1a 6.2a 6.3a 6.4a 6.5x 6.6a 6.7a 6.8a 6.9a 6.10w 6.11a',
      pasted: 64,
    },
    {
      daysAgo: 0,
      at: '07:40',
      minutes: 10,
      says: '6.1a 6.2a 6.3a 6.4a 6.5a 6.6a 6.7a 6.8a 6.9a 6.10w 6.11a 6.12w',
    },
  ],
}
