import type { DemoTopic } from '../types'

/** Full once, after a mark that the pupil gave themselves. */
export const seaWaterAndSalt: DemoTopic = {
  topicId: 'sea-water-and-salt',
  lines: {
    '5.1a': 'average salinity of sea water is about 35 g/kg',
    '5.1w': 'the salinity of sea water is about 35',
    '5.2a': 'salinity = mass of dissolved salt / mass of sea water',
    '5.3a': 'the density of sea water is about 1025 kg/m3',
    '5.3x': 'the density of sea water is about 1000 kg/m3',
    '5.4a': 'density = mass / volume',
    '5.5a': 'sea water is denser than fresh water so a boat floats higher in it',
    '5.5x': 'fresh water is denser than sea water',
    '5.6a': 'when sea water evaporates the salt stays behind so the salinity rises',
    '5.7a': 'water is the solvent, salt is the solute and sea water is the solution',
    '5.7x': 'salt is the solvent',
    '5.8a': 'NaCl -> Na+ + Cl-',
    '5.9a': 'salt lowers the freezing point so sea water freezes at about -1.9 °C',
    '5.9w': 'salt lowers the freezing point of water',
    '5.10a': 'evaporation is faster if the surface is warm or there is a wind',
    '5.11a':
      'to get salt: filter the sea water, then heat it in a dish until crystals begin to form, then leave it to cool, then dry the crystals',
    '5.11w': 'heat the sea water in a dish until the crystals form',
    '5.12a': 'salt water conducts electricity because its ions are free to move',
    '5.12w': 'salt water conducts electricity',
  },
  pages: [
    { daysAgo: 50, at: '17:15', minutes: 6, says: '5.1w 5.3x 5.4a 5.5x 5.7x 5.11w 5.12w' },
    { daysAgo: 49, at: '16:35', minutes: 8, says: '5.1a 5.2a 5.3a 5.4a 5.5a 5.6a 5.7x 5.9w 5.11w' },
    {
      daysAgo: 34,
      at: '18:20',
      minutes: 9,
      says: '5.1a 5.2a 5.3a 5.4a 5.5a 5.6a 5.7a 5.8a 5.9w 5.10a 5.11a 5.12a',
    },
    {
      daysAgo: 6,
      at: '16:45',
      minutes: 9,
      says: '5.1a 5.2a 5.3a 5.4a 5.5a 5.6a 5.7a 5.8a 5.9a 5.10a 5.11a 5.12a',
    },
  ],
}
