/** Editing a syllabus: a form, what can be done to it, and the way back to a file. */
export {
  emptyForm,
  formOf,
  type PointForm,
  type SyllabusForm,
  type SymbolForm,
  type TopicForm,
} from './form'
export {
  addPoint,
  addTopic,
  allPoints,
  dropPoint,
  dropTopic,
  movePoint,
  movePointTo,
  moveTopic,
  renumber,
  setPoint,
  setSyllabus,
  setTopic,
} from './operations'
export { beginEdits, changeEdits, redoEdit, undoEdit, type Edits } from './history'
export { type FieldPath } from './field-mistakes'
export { readForm, readTopic, type FormRead } from './read-form'
export { editSource } from './edit-source'
export { pointsSince, sameMeaning, type IdeasOf, type PointSince } from './meaning'
