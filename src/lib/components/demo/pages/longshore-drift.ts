import type { DemoTopic } from '../types'

/** Reopened: finished once, and then two points went. */
export const longshoreDrift: DemoTopic = {
  topicId: 'longshore-drift',
  lines: {
    '2.1a': 'waves come in to the beach at an angle because of the prevailing wind',
    '2.1b': 'because of the prevailing wind the waves arrive at the beach at an angle',
    '2.1w': 'waves hit the beach at an angle',
    '2.2a': 'swash carries material up the beach at an angle',
    '2.2b': 'the swash carries sand and pebbles up the beach at the same angle',
    '2.3a': 'backwash runs straight down the beach because of gravity',
    '2.3b': 'gravity pulls the backwash straight back down the beach',
    '2.3x': 'backwash runs down the beach at an angle',
    '2.4a': 'swash and backwash repeat over and over so material moves along the shore in a zigzag',
    '2.4b':
      'swash and backwash happen again and again and the material goes along the beach in a zig-zag',
    '2.5a':
      'pebbles get smaller and rounder in the direction of drift because they knock against each other',
    '2.5b':
      'further along the drift the pebbles are smaller and rounder, they knock into each other on the way',
    '2.5w': 'pebbles get smaller along the beach',
    '2.6a':
      'a groyne is a barrier at right angles to the shore that traps material on its up-drift side',
    '2.6b':
      'groyne: a barrier at right angles to the shore. it traps sand on the updrift side of the groyne',
    '2.6w': 'groynes trap sand',
    '2.7a': 'down-drift of a groyne the beach is starved of material so it erodes faster',
    '2.7b': 'beyond the groyne, down-drift, the beach gets less sand so it erodes faster',
    '2.7x': 'the beach down-drift of a groyne becomes wider',
    '2.8a': 'landforms made by drift: spit, bar, tombolo',
    '2.8b': 'drifting material builds a spit or a bar',
    '2.9a':
      'a spit grows where the coastline changes direction and material is deposited out in open water',
    '2.9b':
      'a spit forms where the coast changes direction, the material is deposited in the open water',
    '2.9w': 'a spit is a long bit of sand',
    '2.10a': 'behind a spit the water is sheltered so fine mud settles and a salt marsh can grow',
    '2.10b':
      'behind the spit the water is sheltered, fine mud settles there and a salt marsh grows',
    '2.10w': 'a salt marsh can grow behind a spit',
    '2.11a': 'rate of drift = distance moved / time taken',
    '2.11b': 'rate of drift is distance moved divided by time taken',
    '2.12a':
      'to measure drift mark a pebble with paint, then place the pebble at the waterline, then wait for a fixed time, then measure the distance it has moved',
    '2.12b':
      'paint a pebble, then put the pebble at the waterline, then wait an hour, then measure how far it has moved with a tape',
    '2.12w': 'measure how far a painted pebble goes',
    z1: 'gulls stand on the groynes a lot',
  },
  pages: [
    { daysAgo: 85, at: '16:45', minutes: 7, says: '2.1w 2.2a 2.3x 2.5w 2.6w 2.9w z1' },
    {
      daysAgo: 84,
      at: '16:30',
      minutes: 10,
      says: '2.1a 2.2a 2.3a 2.4a 2.5w 2.6a 2.7x 2.8a 2.11a 2.12w',
    },
    {
      daysAgo: 79,
      at: '17:15',
      minutes: 12,
      says: '2.1a 2.2a 2.3a 2.4a 2.5a 2.6a 2.7a 2.8a 2.9a 2.10a 2.11a 2.12a',
    },
    {
      daysAgo: 64,
      at: '17:40',
      minutes: 13,
      says: '2.1b 2.2b 2.3b 2.4b 2.5b 2.6b 2.7b 2.8b 2.9b 2.10b 2.11b 2.12b',
    },
    {
      daysAgo: 46,
      at: '18:05',
      minutes: 11,
      says: '2.6a 2.7a 2.1a 2.2b 2.3a 2.4b 2.5a 2.8b 2.9a 2.10b 2.11a 2.12b',
    },
    {
      daysAgo: 8,
      at: '16:20',
      minutes: 10,
      says: '2.1a 2.2a 2.3b 2.4a 2.5a 2.6a 2.7x 2.8a 2.9b 2.10w 2.11b 2.12a',
    },
    {
      daysAgo: 8,
      at: '16:45',
      minutes: 2,
      says: '2.7a 2.10a',
      gapsOf: ['2.7', '2.10'],
    },
  ],
}
