/** Sessions -> the drawing of recall over time, in pixels. */
import { daysBetween, recallShare, type Day, type Session } from '../recall'
import { shortDay, tinyDay } from './dates'
import { recallWords } from './sentences'
import { listed } from './words'

/** One session: a stem from the foot to what was said, and on to the finish line what was missed. */
export interface Stem {
  readonly day: Day
  readonly x: number
  /** Where the recall ends; equal to the chart's `top` for a full session. */
  readonly y: number
  readonly full: boolean
  /** Points full, written to the right of the end of the stem; empty where the next stem stands too close. */
  readonly label: string
  readonly labelY: number
  /** The day, written below; empty where it would run into another. */
  readonly dayLabel: string
}

export interface RecallChart {
  readonly width: number
  readonly height: number
  /** The finish line: every point. */
  readonly top: number
  readonly foot: number
  readonly left: number
  readonly right: number
  readonly ticks: readonly { readonly y: number; readonly label: string }[]
  readonly stems: readonly Stem[]
  /** Half the width of a stem's end, so that those of neighbours do not touch. */
  readonly tip: number
  /** The same in words. */
  readonly words: string
}

const HEIGHT = 240
const TOP = 34
const FOOT = 196
const LEFT = 52
const RIGHT = 52
/** Room that a label needs, so that it does not run into the next. */
const DAY_LABEL = 92
const COUNT_LABEL = 40

/** `width` in pixels; sessions oldest first, their distances true to the calendar. */
export function recallChart(sessions: readonly Session[], width: number, today: Day): RecallChart {
  const right = Math.max(LEFT + 1, width - RIGHT)
  const first = sessions[0]?.day ?? today
  const span = Math.max(1, daysBetween(first, sessions.at(-1)?.day ?? today))
  const xs = sessions.map(({ day }) =>
    sessions.length === 1
      ? (LEFT + right) / 2
      : LEFT + 24 + (daysBetween(first, day) / span) * (right - LEFT - 24),
  )
  const days = roomFor(xs, DAY_LABEL)
  // A count stands to the right of its stem: it must end before the next.
  const counts = xs.map((x, i) => (xs[i + 1] ?? Infinity) - x >= COUNT_LABEL)
  return {
    width,
    height: HEIGHT,
    top: TOP,
    foot: FOOT,
    left: LEFT,
    right,
    ticks: ticksOf(sessions),
    tip: tipOf(xs),
    stems: sessions.map(({ day, recall, full }, i) => {
      const y = round(FOOT - recallShare(recall) * (FOOT - TOP))
      return {
        day,
        x: round(xs[i] ?? LEFT),
        y,
        full,
        label: counts[i] ? String(recall.full) : '',
        // Clear of the foot and of the finish line.
        labelY: Math.min(Math.max(y + 15, TOP + 18), FOOT - 8),
        dayLabel: days[i] ? tinyDay(day, today) : '',
      }
    }),
    words: wordsOf(sessions, today),
  }
}

function tipOf(xs: readonly number[]): number {
  const gaps = xs.slice(1).map((x, i) => x - (xs[i] ?? 0))
  return round(Math.min(5, Math.max(1.5, Math.min(Infinity, ...gaps) / 2 - 1)))
}

/** Counts where every session had as many points, else shares of them. */
function ticksOf(sessions: readonly Session[]): { y: number; label: string }[] {
  const sizes = new Set(sessions.map(({ recall }) => recall.points))
  const [points = 0] = sizes
  const whole = sizes.size === 1
  const half = whole ? Math.round(points / 2) : 50
  const most = whole ? Math.max(1, points) : 100
  const label = (value: number) => (whole ? String(value) : `${value} %`)
  return [...new Set([0, half, most])].map((value) => ({
    y: round(FOOT - (value / most) * (FOOT - TOP)),
    label: label(value),
  }))
}

/** Which labels can be shown without running into one another: the last always, then from it backwards. */
function roomFor(xs: readonly number[], room: number): boolean[] {
  let free = Infinity
  return [...xs]
    .reverse()
    .map((x) => {
      if (free - x < room) return false
      free = x
      return true
    })
    .reverse()
}

/** More sessions than these are told by their ends; each has its column in the table of points by day. */
const MOST_TOLD = 8

function wordsOf(sessions: readonly Session[], today: Day): string {
  const finish = 'The finish line is every point.'
  const one = ({ day, recall }: Session) => `${recallWords(recall)} on ${shortDay(day, today)}`
  const [first, last] = [sessions[0], sessions.at(-1)]
  if (!first || !last || sessions.length <= MOST_TOLD)
    return `Recall over time, oldest first: ${listed(sessions.map(one))}. ${finish}`
  const full = sessions.filter((session) => session.full).length
  return `Recall over time, ${sessions.length} sessions: from ${one(first)} to ${one(last)}. ${full} of them reached the finish line, which is every point. The table below has each.`
}

const round = (pixels: number): number => Math.round(pixels * 10) / 10
