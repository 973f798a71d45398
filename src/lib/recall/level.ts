/** Sessions of many topics -> days, none of them above the minutes that the student gives. Days are counted from today, 0. */
import { afterFull, dueOf, isFinished, type Course } from './forecast'
import type { FinishRule } from './settings'

export interface LevelTopic {
  readonly course: Course
  /** Of one check, whole, 1 or more. */
  readonly minutes: number
  /** Its sessions come before this day: its exam, or the end of what is planned. */
  readonly before: number
}

export interface Room {
  /** Minutes of a day. */
  readonly minutesADay: number
  /** Minutes of today that are used already. */
  readonly usedToday: number
}

export interface Placed {
  /** Of the topic in the list. */
  readonly topic: number
  readonly day: number
  /** The day that the rules gave. */
  readonly due: number
  /** Which session of the topic it is, from 1, those already done counted. */
  readonly session: number
  /** Whether finishing the topic needs it, or it keeps a finished one. */
  readonly needed: boolean
}

export interface Levelled {
  readonly placed: readonly Placed[]
  /** For each topic the sessions that finishing needs, or that the days left allow, and that no day has room for. */
  readonly missing: readonly number[]
  /** Whether a topic that could have a session has none at all. */
  readonly nothing: readonly boolean[]
}

/**
 * The topics come hardest first. Each in turn gets the sessions that finish it: on the day that the rules give where there is
 * room, else on the next day that has some before its exam, else on an earlier one. A topic with a check longer than a day's
 * minutes has a day for itself. What is left over then goes to the later sessions of finished topics, by their dates.
 * Where sessions stay without a day, topics that lack them are put to the front and it is tried again, and once by the
 * nearest exam. Where that leaves a topic with nothing, every topic gets one session before any gets a second. What leaves the
 * fewest topics with nothing stands; of those the first that leaves the fewest minutes without a day.
 */
export function level(topics: readonly LevelTopic[], room: Room, rule: FinishRule): Levelled {
  const hardest = topics.map((_, i) => i)
  const nearest = [...hardest].sort((a, b) => topics[a]!.before - topics[b]!.before)
  let best = inOrder(topics, hardest, room, rule)
  const attempt = (order: readonly number[], oneEach = false) => {
    const tried = inOrder(topics, order, room, rule, oneEach)
    const fewer = withNothing(tried) - withNothing(best)
    if (fewer < 0 || (fewer === 0 && missingMinutes(topics, tried) < missingMinutes(topics, best)))
      best = tried
    return tried
  }
  let order = hardest
  let last = best
  for (let round = 0; round < ROUNDS && missingMinutes(topics, last) > 0; round++) {
    const lacks = last.missing
    order = [...order].sort((a, b) => Number(lacks[b]! > 0) - Number(lacks[a]! > 0))
    last = attempt(order)
  }
  if (missingMinutes(topics, best) > 0) attempt(nearest)
  if (withNothing(best) > 0) {
    attempt(hardest, true)
    attempt(nearest, true)
  }
  return best
}

const withNothing = ({ nothing }: Levelled): number => nothing.filter(Boolean).length

const ROUNDS = 3

const missingMinutes = (topics: readonly LevelTopic[], { missing }: Levelled): number =>
  missing.reduce((sum, sessions, i) => sum + sessions * topics[i]!.minutes, 0)

function inOrder(
  topics: readonly LevelTopic[],
  order: readonly number[],
  room: Room,
  rule: FinishRule,
  oneEach = false,
): Levelled {
  const load = [room.usedToday]
  const placed: Placed[] = []
  const missing = topics.map(() => 0)
  const courses = topics.map(({ course }) => course)
  const put = (topic: number, due: number, day: number, needed: boolean) => {
    load[day] = (load[day] ?? 0) + topics[topic]!.minutes
    courses[topic] = afterFull(courses[topic]!, day)
    placed.push({ topic, day, due, session: courses[topic].sessions, needed })
  }
  const fits = (day: number, minutes: number) => {
    const used = load[day] ?? 0
    return used === 0 || used + minutes <= room.minutesADay
  }

  /** Gives a topic the sessions that finish it, or as many of them as are asked for. */
  const give = (i: number, most: number) => {
    const { minutes, before } = topics[i]!
    for (let n = 0; n < most; n++) {
      const due = dueOf(courses[i]!)
      if (due === undefined || due >= before || isFinished(courses[i]!, rule)) return
      const earliest = Math.max(0, (courses[i]!.at ?? -1) + 1)
      const day =
        upwards(due, before, (d) => fits(d, minutes)) ??
        downwards(due - 1, earliest, (d) => fits(d, minutes))
      if (day === undefined) return
      put(i, due, day, true)
    }
  }
  if (oneEach) for (const i of order) give(i, 1)
  for (const i of order) {
    give(i, Infinity)
    missing[i] = lacking(topics[i]!, courses[i]!, rule)
  }
  const nothing = topics.map(
    ({ course }, i) => missing[i]! > 0 && courses[i]!.sessions === course.sessions,
  )

  const going = new Set(order.filter((i) => isFinished(courses[i]!, rule)))
  for (;;) {
    const next = earliestDue([...going], courses, topics)
    if (!next) return { placed, missing, nothing }
    const { topic, due } = next
    const { minutes, before } = topics[topic]!
    const day = upwards(due, before, (d) => fits(d, minutes))
    if (day === undefined) going.delete(topic)
    else put(topic, due, day, false)
  }
}

/** Sessions that it would have had with all the time in the world, and has not. */
function lacking({ course, before }: LevelTopic, reached: Course, rule: FinishRule): number {
  if (isFinished(reached, rule)) return 0
  let alone = course
  for (let due = dueOf(alone); due !== undefined && due < before; due = dueOf(alone)) {
    if (isFinished(alone, rule)) break
    alone = afterFull(alone, due)
  }
  const fewer = alone.sessions - reached.sessions
  return isFinished(alone, rule) ? Math.max(1, fewer) : Math.max(0, fewer)
}

/** Of equal days the topic that stands first. */
function earliestDue(
  going: readonly number[],
  courses: readonly Course[],
  topics: readonly LevelTopic[],
): { topic: number; due: number } | undefined {
  let first: { topic: number; due: number } | undefined
  for (const topic of going) {
    const due = dueOf(courses[topic]!)
    if (due === undefined || due >= topics[topic]!.before) continue
    if (!first || due < first.due) first = { topic, due }
  }
  return first
}

function upwards(from: number, before: number, good: (day: number) => boolean): number | undefined {
  for (let day = from; day < before; day++) if (good(day)) return day
  return undefined
}

function downwards(from: number, to: number, good: (day: number) => boolean): number | undefined {
  for (let day = from; day >= to; day--) if (good(day)) return day
  return undefined
}
