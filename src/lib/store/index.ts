/**
 * The only door to what is kept. Every function rejects with a `StoreError`; a write is done when its promise is.
 * Records that cannot be read are never dropped: they are counted here and listed by `unreadableRecords`.
 */
export { StoreError, type StoreErrorKind } from './errors'
export {
  addCheck,
  changeMark,
  getCheck,
  getPage,
  listChecks,
  listTopicChecks,
  removeCheck,
} from './checks'
export { getDraft, listDrafts, removeDraft, saveDraft } from './drafts'
export { listSyllabi, putSyllabus } from './syllabi'
export { changeSyllabus, getEdit, listEdits, removeEdit, saveEdit } from './edits'
export {
  changePapers,
  listEntries,
  listPapers,
  putPaper,
  removeEntry,
  removePaper,
  saveEntry,
} from './papers'
export { finishRound, getRound, listRounds, removeRound, saveRound } from './rounds'
export {
  forgetWording,
  keepWording,
  latestWords,
  listLearned,
  listTaughtBy,
  withdrawWording,
  type Lesson,
} from './learned'
export {
  endDraft,
  keepDraft,
  sameWork,
  standingDraft,
  type DraftKind,
  type Saving,
  type Standing,
} from './windows'
export { joinDrafts } from './merge'
export type { RecordOf } from './records'
export { draftKey, editKey, entryKey, IMPORT_KEY, roundKey } from './keys'
export { changeSettings, getSettings, saveSettings } from './settings'
export { getImport, removeImport, saveImport } from './imports'
export { removeUnreadable, unreadableRecords, type Unreadable } from './aside'
export { addDemo, demoState, removeDemo, type DemoRecords, type DemoState } from './demo'
export { eraseAll } from './erase'
export { exportAll, type Backup } from './backup'
export { importAll, previewRestore, type Restored } from './restore'
export type { Fates, RestorePreview } from './restore-plan'
export { lastRestore, undoRestore, type LastRestore, type Undone } from './restore-undo'
export type { Kind } from './keys'
export {
  changeReview,
  getPupil,
  getPupilPages,
  listPupils,
  openRecallFile,
  removePupil,
  saveTutorNotes,
  type Opened,
  type WholePupil,
} from './pupils'
export { exportRecall, getSender, nameSender } from './sharing'
export {
  getRemarks,
  openReturnFile,
  removeRemarks,
  type Returned,
  type Returning,
} from './returned'
export { recallFileSchema, returnFileSchema } from './schemas/review'
export type {
  Draft,
  KeptSyllabus,
  LearnedWording,
  Page,
  SyllabusEdit,
  SyllabusImport,
} from './types'
