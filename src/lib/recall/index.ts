/**
 * The only door of the room: checks -> sessions -> status and plan. Pure: the clock is a parameter, records come in
 * any order and are never changed. The rules in words are in the Help page and the developers' guide.
 */
export * from './types'
export { isDay, type Day } from './day'
export { addDays, dayAt, daysBetween, instantAt, type Now } from './days'
export { DEMO_PREFIX, isDemoId, withoutDemo } from './demo'
export {
  countedCheck,
  decidedOutcomes,
  isFull,
  outcomeOf,
  recallOf,
  recallShare,
  type Decided,
  type Recall,
} from './outcomes'
export { byTime } from './by-time'
export { checkTimeMs, dayOf, sessionsOf, type Session } from './sessions'
export { explainStatus, runOf, statusOf, type StatusReason } from './status'
export { gapShare, nextDate, type NextDate, type NextReason } from './next-date'
export { marksOfToday, refToday } from './edited'
export { openGaps, pointHistories, type Seen } from './points'
export { howLong, type HowLong } from './how-long'
export { planTopic, type TopicPlan } from './plan'
export { courseOf, forecast, type Course } from './forecast'
export {
  planToExam,
  type ExamPlan,
  type PlannedCheck,
  type PlannedDay,
  type PlanQuestion,
} from './exam-plan'
export { PLANNED_WITHOUT_EXAM, type PlanWarning } from './plan-warnings'
export { whatFirst, type FirstTopic, type PartReason, type WeighedReason } from './first'
export {
  tonight,
  topicsOfTomorrow,
  type Tonight,
  type TonightPoint,
  type TonightQuestion,
  type TonightReason,
} from './tonight'
export {
  endRound,
  goOn,
  outcomesOf,
  pointNow,
  remark,
  standing,
  timeIsUp,
  wrote,
  type Round,
  type RoundPoint,
  type RoundTry,
} from './round'
export { afterWriting, gapsOf, startPile, type Pile } from './drill'
export {
  emptyEntry,
  emptyRow,
  entryOf,
  isBlank,
  MOST_MARKS,
  readEntry,
  type EntryFault,
  type EntryRead,
  type PaperEntry,
  type PaperRow,
} from './paper-entry'
export { WAYS_WRONG, type PaperQuestion, type WentWrong } from './papers'
export {
  byPaper,
  lossesOf,
  marksOf,
  marksOverTime,
  pointsLost,
  pointsOfToday,
  topicMarks,
  type Losses,
  type Marks,
  type PointLost,
  type TopicMarks,
} from './papers-totals'
export {
  covers,
  defaultSettings,
  MINUTES_A_DAY,
  nextExam,
  ratingOf,
  type Exam,
  type FinishRule,
  type Rating,
  type Settings,
  type TopicPlace,
  type TopicRating,
} from './settings'
