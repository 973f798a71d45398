/** The tutor's pages as rows of a table file: everything that is shown, a heading first. */
import type { Outcome } from '../marking/types'
import { dayOf, decidedOutcomes, type Check } from '../recall'
import { ofPupil, type Group, type MissedPoint, type PupilChecks, type Review } from '../review'
import { timeWords } from './dates'
import { outcomeWords } from './sentences'

type Rows = readonly (readonly string[])[]

const GROUP_HEAD = [
  'Pupil',
  'Topic',
  'Points full',
  'Points',
  'Points full before',
  'Full sessions in a row',
  'Days since',
]

export const groupTable = ({ columns, rows }: Group, missed: readonly MissedPoint[]): Rows => [
  GROUP_HEAD,
  ...rows.flatMap(({ name, cells }) =>
    cells.flatMap((cell, i) =>
      cell
        ? [
            [
              name,
              columns[i]?.title ?? '',
              String(cell.full),
              String(cell.points),
              cell.before ? String(cell.before.full) : '',
              String(cell.run),
              String(cell.daysSince),
            ],
          ]
        : [],
    ),
  ),
  [],
  ['Topic', 'Point', 'The syllabus says', 'Pupils who missed it', 'Of', 'Names'],
  ...missed.map(({ title, ref, text, names, of }) => [
    title,
    ref,
    text,
    String(names.length),
    String(of),
    names.join(', '),
  ]),
]

const CHECK_HEAD = [
  'Pupil',
  'Topic',
  'Day',
  'Time',
  'Kind',
  'Words',
  'Minutes written',
  'Pastes',
  'Characters pasted',
  'Times away',
  'Minutes away',
  'Point',
  'The syllabus says',
  'Marker',
  'Pupil’s mark',
  'Tutor’s mark',
  'Comment',
]

/** A row for each point of each check. */
export const pupilTable = (
  name: string,
  { checks, topics }: PupilChecks,
  reviews: ReadonlyMap<string, Review>,
): Rows => [
  CHECK_HEAD,
  ...checks.flatMap(({ check, topic }) => {
    const texts = new Map(topics[topic]?.points.map(({ ref, text }) => [ref, text]))
    const review = new Map(reviews.get(check.id)?.points.map((point) => [point.ref, point]))
    return decidedOutcomes(ofPupil(check)).map(({ ref, marker, outcome }) => [
      ...factCells(name, check),
      ref,
      texts.get(ref) ?? '',
      outcomeWords(marker),
      outcomeWords(outcome),
      words(review.get(ref)?.outcome),
      review.get(ref)?.comment ?? '',
    ])
  }),
]

const words = (outcome: Outcome | null | undefined): string =>
  outcome ? outcomeWords(outcome) : ''

function factCells(name: string, check: Check): string[] {
  const { pastes, aways, awayMs } = check
  return [
    name,
    check.topicTitle,
    dayOf(check),
    timeWords(check.atMs, check.zone),
    check.kind === 'gap' ? 'gap check' : 'check',
    String(check.words),
    minutes(check.writingMs),
    String(pastes.length),
    String(pastes.reduce((sum, { length }) => sum + length, 0)),
    aways === undefined ? '' : String(aways),
    awayMs === undefined ? '' : minutes(awayMs),
  ]
}

const minutes = (ms: number): string => (ms / 60_000).toFixed(1)
