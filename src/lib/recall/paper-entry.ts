/** Exam questions as they are typed, and what they come to once they are whole. */
import { isDay, type Day } from './day'
import type { PaperQuestion, WentWrong } from './papers'
import { pointsOfToday } from './papers-totals'
import type { TopicPlace } from './settings'

/** Of one paper, `id` "new", or the change of a question that is logged, with its id. Anything may be half-written. */
export interface PaperEntry {
  readonly schema: 1
  readonly id: string
  readonly day: string
  readonly source: string
  readonly rows: readonly PaperRow[]
  readonly savedAtMs: number
}

/** One question of it. */
export interface PaperRow {
  /** The id of the question once it is logged. */
  readonly key: string
  readonly question: string
  readonly syllabusId: string
  readonly topicId: string
  readonly won: string
  readonly outOf: string
  readonly points: PaperQuestion['points']
  readonly wentWrong: readonly WentWrong[]
  readonly note: string
}

/** A field that cannot be logged as it is. `row` is absent for what the whole paper shares. */
export interface EntryFault {
  readonly row?: string
  readonly field: 'day' | 'source' | 'question' | 'topic' | 'won' | 'outOf' | 'points'
  readonly says: string
}

export type EntryRead =
  | { readonly ok: true; readonly papers: readonly PaperQuestion[] }
  | { readonly ok: false; readonly faults: readonly EntryFault[] }

/** No question of an exam is worth more; a slip of the finger is. Our own choice. */
export const MOST_MARKS = 500

export const emptyRow = (key: string, place?: TopicPlace): PaperRow => ({
  key,
  question: '',
  syllabusId: place?.syllabusId ?? '',
  topicId: place?.topicId ?? '',
  won: '',
  outOf: '',
  points: [],
  wentWrong: [],
  note: '',
})

export const emptyEntry = (day: Day, key: string, place?: TopicPlace): PaperEntry => ({
  schema: 1,
  id: 'new',
  day,
  source: '',
  rows: [emptyRow(key, place)],
  savedAtMs: 0,
})

/** A logged question as it is typed, to be changed; its points by the refs of today. */
export const entryOf = (paper: PaperQuestion): PaperEntry => ({
  schema: 1,
  id: paper.id,
  day: paper.day,
  source: paper.source,
  rows: [
    {
      key: paper.id,
      question: paper.question ?? '',
      syllabusId: paper.syllabusId,
      topicId: paper.topicId,
      won: String(paper.marksWon),
      outOf: String(paper.marksOutOf),
      points: pointsOfToday(paper),
      wentWrong: paper.wentWrong ?? [],
      note: paper.note ?? '',
    },
  ],
  savedAtMs: 0,
})

/** Whether nothing is typed in it; the day and the topic are there from the start. */
export const isBlank = ({ source, rows }: PaperEntry): boolean =>
  source.trim() === '' && rows.every(isBlankRow)

const isBlankRow = ({ question, won, outOf, points, wentWrong, note }: PaperRow): boolean =>
  [question, won, outOf, note].every((text) => text.trim() === '') &&
  points.length === 0 &&
  wentWrong.length === 0

/**
 * The questions of an entry, or every field that stands in the way, in the order of the page. A question with nothing in
 * it is passed over where another has something.
 */
export function readEntry(entry: PaperEntry, today: Day): EntryRead {
  const faults: EntryFault[] = []
  const day = entry.day.trim()
  const source = entry.source.trim()
  if (!isDay(day)) faults.push({ field: 'day', says: 'Give the day on which you answered it.' })
  else if (day > today) faults.push({ field: 'day', says: 'This day is still to come.' })
  if (source === '')
    faults.push({ field: 'source', says: 'Name the paper, so that you know it again.' })

  const filled = entry.rows.filter((row) => !isBlankRow(row))
  const rows = filled.length > 0 ? filled : entry.rows.slice(0, 1)
  const papers = rows.map((row): PaperQuestion => {
    const { won, outOf } = marksOfRow(row, faults)
    const question = row.question.trim()
    const note = row.note.trim()
    const lost = outOf > won
    return {
      schema: 1,
      id: row.key,
      syllabusId: row.syllabusId,
      topicId: row.topicId,
      day,
      source,
      marksWon: won,
      marksOutOf: outOf,
      points: row.points,
      ...(question === '' ? {} : { question }),
      // Ticked before the marks were put right: nothing went wrong where no mark is lost.
      ...(lost && row.wentWrong.length > 0 ? { wentWrong: row.wentWrong } : {}),
      ...(note === '' ? {} : { note }),
    }
  })
  return faults.length > 0 ? { ok: false, faults } : { ok: true, papers }
}

function marksOfRow(row: PaperRow, faults: EntryFault[]): { won: number; outOf: number } {
  const say = (field: EntryFault['field'], says: string) =>
    faults.push({ row: row.key, field, says })
  if (row.topicId === '') say('topic', 'Choose the topic. A question on two topics is two entries.')
  const won = marksFrom(row.won)
  const outOf = marksFrom(row.outOf)
  if (row.won.trim() === '') say('won', 'Give the marks that you won; 0 if there were none.')
  else if (won === undefined) say('won', NO_MARKS)
  else if (outOf !== undefined && won > outOf)
    say('won', `You cannot win ${row.won.trim()} marks out of ${row.outOf.trim()}.`)
  if (row.outOf.trim() === '') say('outOf', 'Give the marks that there were to win.')
  else if (outOf === undefined) say('outOf', NO_MARKS)
  else if (outOf === 0) say('outOf', 'There must be something to win: at least half a mark.')
  if (won !== undefined && won === outOf && row.points.some(({ lost }) => lost))
    say(
      'points',
      'You won every mark, so no point can have lost one. Change the marks or the points.',
    )
  return { won: won ?? 0, outOf: outOf ?? 0 }
}

const NO_MARKS = `Marks are whole or half numbers from 0 to ${MOST_MARKS}, such as 3 or 2.5.`

/** A comma is a point: half the world writes it so. `undefined` for what is no marks. */
function marksFrom(text: string): number | undefined {
  const written = text.trim().replace(',', '.').replace('½', '.5')
  if (!/^(?:\d+(?:\.[05]?0*)?|\.50*)$/.test(written)) return undefined
  const marks = Number(written)
  return marks <= MOST_MARKS ? marks : undefined
}
