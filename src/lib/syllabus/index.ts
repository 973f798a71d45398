/** The room's only door: what must be known, read from a file, checked and written. */
export * from './edit'
export * from './export'
export { NotationError } from './notation-error'
export { readIdea, readWording, readWordings, writeIdea, writeWordings } from './notation'
export { kindOfEquation, symbolsIn, type SymbolsRead } from './equation'
export { readSyllabus, type SyllabusRead } from './read'
export { topicId } from './slug'
export { FORMULA } from './spreadsheet'
export { type SyllabusMistake } from './source'
export { FORMAT } from './types'
export type {
  Equation,
  Idea,
  Part,
  Point,
  Syllabus,
  Topic,
  Value,
  Wording,
  WordSlot,
} from './types'
export { readValue } from './value'
export { writeSyllabus } from './write'
