/** Sessions -> the status of a topic, and which rule gave it. It depends on the history and the settings alone. */
import { addDays, daysBetween, type Day } from './days'
import type { Recall } from './outcomes'
import type { Session } from './sessions'
import type { FinishRule } from './settings'
import type { Status } from './types'

/** Why a topic has its status, as data: the room `view` makes the sentence. */
export type StatusReason =
  | { readonly status: 'not checked'; readonly rule: 'no-check' }
  | {
      readonly status: 'gaps'
      readonly rule: 'latest-not-full'
      readonly day: Day
      readonly recall: Recall
    }
  | ({
      readonly status: 'full'
      readonly rule: 'latest-full'
      /** Full sessions still needed, and the first day on which the last of them can finish the topic. */
      readonly sessionsLeft: number
      readonly finishableFrom: Day
    } & Run)
  | ({ readonly status: 'finished'; readonly rule: 'run-long-enough' } & Run)
  | {
      readonly status: 'reopened'
      readonly rule: 'not-full-after-finished'
      readonly finishedOn: Day
      readonly day: Day
      readonly recall: Recall
    }

interface Run {
  /** Full sessions in a row, the latest included. */
  readonly run: number
  readonly firstDay: Day
  readonly lastDay: Day
  readonly sessionsNeeded: number
  readonly daysApart: number
}

/** The full sessions in a row at the end of a history, oldest first; empty where the latest was not full. */
export function runOf(sessions: readonly Session[]): Session[] {
  return sessions.slice(sessions.map(({ full }) => full).lastIndexOf(false) + 1)
}

export const statusOf = (sessions: readonly Session[], settings: FinishRule): Status =>
  explainStatus(sessions, settings).status

export function explainStatus(sessions: readonly Session[], settings: FinishRule): StatusReason {
  const latest = sessions.at(-1)
  if (!latest) return { status: 'not checked', rule: 'no-check' }

  const first = runOf(sessions)[0]
  if (first) return explainRun(first, latest, runOf(sessions).length, settings)

  const { day, recall } = latest
  const finishedOn = lastFinished(sessions, settings)
  return finishedOn === undefined
    ? { status: 'gaps', rule: 'latest-not-full', day, recall }
    : { status: 'reopened', rule: 'not-full-after-finished', finishedOn, day, recall }
}

function explainRun(
  first: Session,
  latest: Session,
  length: number,
  settings: FinishRule,
): StatusReason {
  const { sessionsNeeded, daysApart } = settings
  const run = { run: length, firstDay: first.day, lastDay: latest.day, sessionsNeeded, daysApart }
  if (finishes(run, settings)) return { status: 'finished', rule: 'run-long-enough', ...run }
  // A run that is long enough in sessions but not in days still needs one more session.
  const sessionsLeft = Math.max(1, sessionsNeeded - length)
  const soonest = addDays(latest.day, sessionsLeft)
  const wideEnough = addDays(first.day, daysApart)
  const finishableFrom = soonest > wideEnough ? soonest : wideEnough
  return { status: 'full', rule: 'latest-full', ...run, sessionsLeft, finishableFrom }
}

const finishes = (run: Pick<Run, 'run' | 'firstDay' | 'lastDay'>, settings: FinishRule): boolean =>
  run.run >= settings.sessionsNeeded && daysBetween(run.firstDay, run.lastDay) >= settings.daysApart

/** The day on which a history last became finished; `undefined` where it never did. */
function lastFinished(sessions: readonly Session[], settings: FinishRule): Day | undefined {
  let run: Session[] = []
  let finished = false
  let finishedOn: Day | undefined
  for (const session of sessions) {
    run = session.full ? [...run, session] : []
    const [first] = run
    const done =
      first !== undefined &&
      finishes({ run: run.length, firstDay: first.day, lastDay: session.day }, settings)
    if (done && !finished) finishedOn = session.day
    finished = done
  }
  return finishedOn
}
