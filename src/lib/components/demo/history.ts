/** Three months of an invented pupil. Content: loaded when the demo is asked for, and only then. */
import { lifeBetweenTheTides } from './pages/life-between-the-tides'
import { longshoreDrift } from './pages/longshore-drift'
import { measuringTheShore } from './pages/measuring-the-shore'
import { rocksOfTheShore } from './pages/rocks-of-the-shore'
import { seaWaterAndSalt } from './pages/sea-water-and-salt'
import { wavesAndTides } from './pages/waves-and-tides'
import { weatheringAndCliffs } from './pages/weathering-and-cliffs'
import type { DemoHistory } from './types'

export const demoHistory: DemoHistory = {
  syllabusId: 'shoreline-science-level-2',
  topics: [
    wavesAndTides,
    longshoreDrift,
    rocksOfTheShore,
    weatheringAndCliffs,
    seaWaterAndSalt,
    lifeBetweenTheTides,
    measuringTheShore,
  ],
  exams: [
    {
      inDays: 24,
      title: 'Paper 1',
      topicIds: [
        'waves-and-tides',
        'longshore-drift',
        'rocks-of-the-shore',
        'weathering-and-cliffs',
      ],
    },
    {
      inDays: 38,
      title: 'Paper 2',
      topicIds: [
        'sea-water-and-salt',
        'life-between-the-tides',
        'measuring-the-shore',
        'water-on-the-move-rivers-to-the-sea',
      ],
    },
  ],
  ratings: [
    { topicId: 'weathering-and-cliffs', rating: 'hard' },
    { topicId: 'measuring-the-shore', rating: 'hard' },
    { topicId: 'waves-and-tides', rating: 'easy' },
    { topicId: 'sea-water-and-salt', rating: 'middling' },
  ],
  papers: [
    {
      daysAgo: 19,
      topicId: 'weathering-and-cliffs',
      source: 'Mock paper',
      question: '3',
      wentWrong: ['left-out', 'working'],
      marksWon: 2,
      marksOutOf: 5,
      points: [
        { ref: '4.2', lost: true },
        { ref: '4.3', lost: false },
        { ref: '4.8', lost: true },
      ],
    },
    {
      daysAgo: 19,
      topicId: 'longshore-drift',
      source: 'Mock paper',
      question: '4',
      wentWrong: ['not-known'],
      marksWon: 3,
      marksOutOf: 4,
      points: [
        { ref: '2.6', lost: false },
        { ref: '2.7', lost: true },
      ],
    },
    {
      daysAgo: 18,
      topicId: 'waves-and-tides',
      source: 'Worksheet on tides',
      question: '2',
      marksWon: 3,
      marksOutOf: 3,
      points: [
        { ref: '1.10', lost: false },
        { ref: '1.11', lost: false },
      ],
    },
  ],
}
