/** The only door of the room: pupils' files, moderation, agreement. Pure. */
export type * from './types'
export { chosenChecks, makeRecallFile, topicKey, type Choice, type ToShare } from './choose'
export { byTopic, summarise, withReview } from './summary'
export {
  groupOf,
  mostMissed,
  type Group,
  type GroupCell,
  type GroupColumn,
  type GroupRow,
  type MissedPoint,
} from './group'
export {
  agreementOf,
  agreementOfMarks,
  CATEGORIES,
  kappaOf,
  type Agreement,
  type Kappa,
  type Table,
} from './agreement'
export {
  changedMarks,
  changesSince,
  ofPupil,
  seenNow,
  sentenceOf,
  type ChangedMark,
  type Since,
} from './changed'
export {
  agreementsOf,
  makeReturnFile,
  marksBeside,
  newReview,
  withPoint,
  type Agreements,
  type Beside,
} from './moderate'
export { topicGrid, type TopicGrid, type TopicRow } from './grids'
export { batchOf, type Batch, type BatchPage, type BatchPoint, type MarkedText } from './batch'
