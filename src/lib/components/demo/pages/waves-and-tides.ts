import type { DemoTopic } from '../types'

/** Finished: gaps twice, then full on three days and once more since. */
export const wavesAndTides: DemoTopic = {
  topicId: 'waves-and-tides',
  lines: {
    '1.1a':
      'most waves are made by wind blowing over the sea. friction transfers energy from the wind to the water',
    '1.1b':
      'wind blows over the sea surface and the friction gives energy to the water, that makes waves',
    '1.1w': 'waves come from the wind',
    '1.2a': 'fetch = the distance of open water the wind has blown over',
    '1.2b': 'the fetch is how far the wind blows over open water',
    '1.2w': 'theres something called fetch',
    '1.3a':
      'waves get bigger if the wind is stronger, if it blows for longer and if the fetch is longer',
    '1.3b': 'bigger waves when: stronger wind, wind blows for a longer time, longer fetch',
    '1.3w': 'stronger wind makes bigger waves',
    '1.4a':
      'in deep water a wave carries energy forward but the water itself just goes round in circles',
    '1.4b': 'a wave in deep water carries energy, the water particles only move in circles',
    '1.4x': 'in deep water the wave carries the water forward across the sea',
    '1.5a':
      'a wave breaks in shallow water because friction with the sea bed slows its base and the crest topples over',
    '1.5b':
      'when it gets to shallow water, friction with the sea bed slows the bottom of the wave and the top falls over so it breaks',
    '1.5w': 'waves break when it gets shallow',
    '1.6a': 'wave speed = frequency x wavelength',
    '1.6b': 'v = f λ',
    '1.7a': 'constructive waves have a swash stronger than the backwash so they build up the beach',
    '1.7b': 'constructive: the swash is stronger than the backwash, so it builds up the beach',
    '1.8a':
      'destructive waves have a backwash stronger than the swash so they remove material from the beach',
    '1.8b':
      'destructive: the backwash is stronger than the swash, so it takes away material from the beach',
    '1.8w': 'destructive waves are the other way round',
    '1.9a':
      'tides are caused by the gravity of the moon and, less strongly, the gravity of the sun',
    '1.9b': 'the gravity of the moon causes the tides and the suns gravity does too, but less',
    '1.9w': 'tides are caused by the gravity of the moon',
    '1.10a':
      'spring tides have the largest range, when the earth, moon and sun are in a straight line',
    '1.10b':
      'spring tides have the largest tidal range and come when the sun, moon and earth are lined up in a straight line',
    '1.10w': 'spring tides are the big ones',
    '1.11a': 'neap tides have the smallest range, when the sun and moon are at right angles',
    '1.11b':
      'neap tides = smallest tidal range. sun and moon are at right angles seen from the earth',
    '1.11x': 'neap tides come when the sun and the moon are in a straight line',
    '1.12a': 'high tide comes about every 12.4 hours',
    '1.12b': 'on most coasts the next high tide is about 12.4 h after the last high tide',
    '1.12x': 'high tide comes about every 10 hours',
    z1: 'surfers like a long fetch because they get clean waves in cornwall',
  },
  pages: [
    {
      daysAgo: 88,
      at: '16:35',
      minutes: 6,
      says: '1.1w 1.2w 1.5w 1.4x 1.6a 1.9w 1.10w 1.11x z1',
    },
    {
      daysAgo: 88,
      at: '17:20',
      minutes: 4,
      says: '1.1a 1.4a 1.9a 1.11a',
      gapsOf: ['1.1', '1.4', '1.9', '1.11'],
    },
    {
      daysAgo: 87,
      at: '16:50',
      minutes: 9,
      says: '1.1a 1.3w 1.4a 1.5w 1.6a 1.7a 1.8w 1.9a 1.10a 1.11a',
    },
    {
      daysAgo: 82,
      at: '17:05',
      minutes: 11,
      says: '1.1a 1.2a 1.3a 1.4a 1.5a 1.6a 1.7a 1.8a 1.9a 1.10a 1.11a 1.12x',
    },
    {
      daysAgo: 81,
      at: '16:40',
      minutes: 12,
      says: '1.1a 1.2a 1.3a 1.4a 1.5a 1.6a 1.7a 1.8a 1.9a 1.10a 1.11a 1.12a',
    },
    {
      daysAgo: 66,
      at: '18:10',
      minutes: 12,
      says: '1.9b 1.10b 1.11b 1.12b 1.1b 1.2b 1.3b 1.4b 1.5b 1.6b 1.7b 1.8b',
    },
    {
      daysAgo: 47,
      at: '17:30',
      minutes: 10,
      says: '1.2b 1.1a 1.3b 1.4a 1.5b 1.6a 1.7b 1.8b 1.9a 1.10b 1.11a 1.12a',
    },
    {
      daysAgo: 13,
      at: '16:55',
      minutes: 9,
      says: '1.1b 1.2a 1.3a 1.4b 1.5a 1.6b 1.7a 1.8a 1.9b 1.10a 1.11b 1.12b z1',
    },
  ],
}
