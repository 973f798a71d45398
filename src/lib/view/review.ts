/** What the tutor's pages say. */
import { dayFrom } from './dates'
import type { Agreement, ChangedMark, GroupCell, GroupRow, Kappa } from '../review'
import type { Day } from '../recall'
import { outcomeWords, recallWords } from './sentences'
import { counted } from './words'

export const NEED_RULE =
  'Who needs help comes first: the lowest share of points full over the latest session of each topic; of equals, who has not checked for longest.'

/** "today", "1 day ago". */
export const daysAgo = (days: number): string =>
  days <= 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`

/** "17 of 24 points, last checked 3 days ago". */
export const rowWords = ({ full, points, daysSince }: GroupRow): string =>
  daysSince === undefined
    ? 'No whole topic checked yet'
    : `${recallWords({ full, points })}, last checked ${daysAgo(daysSince)}`

/** The arrow that stands for a trend; none where nothing is compared. */
export const TREND_SIGN: Readonly<Record<GroupCell['trend'], string>> = {
  up: '↗',
  down: '↘',
  same: '→',
  first: '',
}

/** A cell read aloud: "17 of 24 points, up from 15, full 2 days in a row, 3 days ago". */
export const cellWords = ({ full, points, before, trend, run, daysSince }: GroupCell): string =>
  [
    recallWords({ full, points }),
    trend === 'first'
      ? 'first session'
      : trend === 'same'
        ? 'as before'
        : before &&
          `${trend} from ${before.full}${before.points === points ? '' : ` of ${before.points}`}`,
    run > 0 && `full ${counted(run, 'session')} in a row`,
    daysAgo(daysSince),
  ]
    .filter((part) => part)
    .join(', ')

export const DIRECTION_WORDS: Readonly<Record<ChangedMark['direction'], string>> = {
  for: 'in their own favour',
  against: 'against themselves',
  neither: 'worth the same',
}

/** "3 marks changed in their own favour, 1 against themselves." */
export function changedWords(marks: readonly ChangedMark[]): string {
  const count = (direction: ChangedMark['direction']) =>
    marks.filter((mark) => mark.direction === direction).length
  if (marks.length === 0) return 'No mark was changed.'
  const neither = count('neither')
  return `${counted(marks.length, 'mark')} changed: ${count('for')} in their own favour, ${count('against')} against themselves${neither > 0 ? `, ${neither} worth the same` : ''}.`
}

export const changeWords = ({ from, to }: ChangedMark): string =>
  `${outcomeWords(from)} → ${outcomeWords(to)}`

/** "21 of 24 points the same, 88 %." */
export const sameWords = ({ same, points }: Agreement): string =>
  points === 0
    ? 'No point was marked by both.'
    : `${same} of ${counted(points, 'point')} the same, ${Math.round((100 * same) / points)} %.`

/** "Cohen’s kappa 0.72, 95 % interval 0.51 to 0.93." */
export function kappaWords(kappa: Kappa | undefined): string {
  if (!kappa)
    return 'Cohen’s kappa has no value here: it needs points, and more than one kind of mark.'
  // The large-sample error is nought where nothing differs, on three points as on three hundred.
  if (kappa.error < 1e-9)
    return `Cohen’s kappa ${two(kappa.value)}; no interval can be given, because no mark differs.`
  return `Cohen’s kappa ${two(kappa.value)}, 95 % interval ${two(kappa.low)} to ${two(kappa.high)}.`
}

const two = (number: number): string => number.toFixed(2).replace('-', '−')

export const KAPPA_SOURCE =
  'Kappa is agreement beyond chance: 1 is full agreement, 0 what chance would give. Cohen (1960), Educational and Psychological Measurement 20, 37–46; interval from the large-sample standard error of Fleiss, Cohen and Everitt (1969), Psychological Bulletin 72, 323–327. With few points, and because points of one page are not independent, the interval is a rough guide.'

/**
 * What fits on a page, in millimetres, measured on prints on A4 and on US Letter, which is shorter: a column without the topics, a row
 * of these, a point's first line, each line of its text.
 */
const PRINTED = { height: 165, row: 6.3, head: 5.2, line: 4.4, letters: 42, columns: 2, most: 14 }

/** The topics, and the points to go through, that fit on one page; each list from its beginning. */
export function onOnePage<T, P extends { readonly text: string }>(
  topics: readonly T[],
  points: readonly P[],
): { topics: readonly T[]; points: readonly P[] } {
  const { height, row, head, line, letters, columns, most } = PRINTED
  const shown = topics.slice(0, most)
  const column = height - row * shown.length
  let full = 0
  let used = 0
  const fitting = points.findIndex(({ text }) => {
    const own = head + line * Math.max(1, Math.ceil(text.length / letters))
    if (used + own > column) {
      full += 1
      used = 0
    }
    used += own
    return full === columns || own > column
  })
  return { topics: shown, points: fitting === -1 ? points : points.slice(0, fitting) }
}

/** "made on Tuesday 2 March 2027, opened today". */
export const fileWords = (made: Day, opened: Day, today: Day): string =>
  `File made ${dayFrom(made, today)}, opened here ${dayFrom(opened, today)}.`
