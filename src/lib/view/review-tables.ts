/** The tutor's pages as rows of a table file: everything that is shown, a heading first. */
import type { Outcome } from '../marking/types'
import { dayOf, decidedOutcomes, type Check } from '../recall'
import {
  CATEGORIES,
  changedMarks,
  ofPupil,
  sentenceOf,
  type Agreement,
  type Agreements,
  type Group,
  type MissedPoint,
  type PupilChecks,
  type Review,
  type SharedPage,
} from '../review'
import { timeWords } from './dates'
import { DIRECTION_WORDS } from './review'
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
  'Changed',
  'The sentence',
  'Tutor’s mark',
  'Comment',
  'Comment on the check',
]

/** A row for each point of each check; then how far the tutor agrees. */
export const pupilTable = (
  name: string,
  { checks, topics }: PupilChecks,
  reviews: ReadonlyMap<string, Review>,
  pages: ReadonlyMap<string, SharedPage>,
  agreements: Agreements,
): Rows => [
  CHECK_HEAD,
  ...checks.flatMap(({ check, topic }) => {
    const texts = new Map(topics[topic]?.points.map(({ ref, text }) => [ref, text]))
    const review = reviews.get(check.id)
    const given = new Map(review?.points.map((point) => [point.ref, point]))
    const page = pages.get(check.id)
    const changed = new Map(changedMarks([check]).map((mark) => [mark.ref, mark.direction]))
    return decidedOutcomes(ofPupil(check)).map(({ ref, marker, outcome }) => {
      const direction = changed.get(ref)
      return [
        ...factCells(name, check),
        ref,
        texts.get(ref) ?? '',
        outcomeWords(marker),
        outcomeWords(outcome),
        direction ? DIRECTION_WORDS[direction] : '',
        direction && page ? sentenceOf(page.text, page.report, ref) : '',
        words(given.get(ref)?.outcome),
        given.get(ref)?.comment ?? '',
        review?.comment ?? '',
      ]
    })
  }),
  ...agreementRows('Marker', agreements.marker),
  ...agreementRows('Pupil', agreements.pupil),
]

const agreementRows = (other: string, { table, points, same, kappa }: Agreement): Rows =>
  points === 0
    ? []
    : [
        [],
        [`Tutor \\ ${other}`, ...CATEGORIES.map(outcomeWords)],
        ...CATEGORIES.map((category, i) => [
          outcomeWords(category),
          ...(table[i] ?? []).map(String),
        ]),
        ['Points the same', String(same), 'Of', String(points)],
        ...(kappa
          ? [
              ['Cohen’s kappa', kappa.value.toFixed(3)],
              ['95 % interval', kappa.low.toFixed(3), kappa.high.toFixed(3)],
            ]
          : []),
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
