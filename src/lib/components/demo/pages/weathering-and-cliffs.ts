import type { DemoTopic } from '../types'

/** Gaps that keep coming back: the steps of freeze-thaw, and attrition taken for abrasion. */
export const weatheringAndCliffs: DemoTopic = {
  topicId: 'weathering-and-cliffs',
  lines: {
    '4.1a': 'weathering breaks rock down where it stands but erosion also carries the pieces away',
    '4.1w': 'weathering breaks rock down',
    '4.2a':
      'freeze-thaw: water gets into a crack, then the water freezes and expands, then the crack is forced wider, and after many repeats a piece of rock breaks off',
    '4.2w': 'freeze-thaw: water gets into a crack',
    '4.3a': 'the volume of water rises by about 9% when it turns to ice',
    '4.3x': 'the volume of water rises by 20% when it turns to ice',
    '4.4a': 'CO2 + H2O -> H2CO3',
    '4.5a': 'CaCO3 + H2CO3 -> Ca(HCO3)2',
    '4.6a':
      'hydraulic action is the force of waves squeezing air into cracks until the rock breaks',
    '4.6w': 'hydraulic action is the force of the waves',
    '4.7a': 'abrasion is the cliff being worn away by sand and pebbles that the waves throw at it',
    '4.7x': 'abrasion is pebbles hitting each other',
    '4.8a': 'attrition is pebbles knocking against each other and getting smaller and rounder',
    '4.8x': 'attrition is pebbles wearing away the cliff',
    '4.9a':
      'waves cut a notch at the foot of the cliff, then the rock above is left overhanging, then the overhang collapses, and then a wave-cut platform is left',
    '4.9w': 'waves cut a notch at the foot of the cliff and it collapses',
    '4.10a': 'headland: crack, then a cave, then an arch, then a stack, then a stump',
    '4.11a':
      'soft rock erodes faster and forms bays, while hard rock erodes slower and stands out as headlands',
    '4.12a': 'you can protect a cliff with a sea wall or rock armour or gabions',
  },
  pages: [
    { daysAgo: 71, at: '16:55', minutes: 5, says: '4.1w 4.2w 4.7x 4.8x 4.10a' },
    { daysAgo: 70, at: '17:20', minutes: 7, says: '4.1w 4.2w 4.3x 4.6w 4.7x 4.9w 4.10a 4.12a' },
    {
      daysAgo: 55,
      at: '17:45',
      minutes: 9,
      says: '4.1a 4.2w 4.3a 4.4a 4.6a 4.7a 4.8x 4.9w 4.10a 4.11a 4.12a',
      changed: { '4.9': 'full' },
    },
    {
      daysAgo: 31,
      at: '16:30',
      minutes: 10,
      says: '4.1a 4.2w 4.3a 4.4a 4.6a 4.7a 4.8a 4.9a 4.10a 4.11a 4.12a',
    },
    {
      daysAgo: 5,
      at: '17:05',
      minutes: 11,
      says: '4.1a 4.2w 4.3a 4.4a 4.5a 4.6a 4.7a 4.8a 4.9a 4.10a 4.11a 4.12a',
    },
  ],
}
