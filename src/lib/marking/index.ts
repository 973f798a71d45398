export type { Clash, IdeaMark, Outcome, PointMark, Report, Span } from './types'
export { mark, MARKER, type MarkOptions } from './mark'
export type { Learned, MarkedWording } from './3-outcomes/recognise'
export { evidenceOf, weighedCases, type WeighedCase } from './evidence-of'
export { DRAFT_EVIDENCE } from './3-outcomes/draft-evidence'
export { probabilities, WEIGHED, type ClassWeights } from './3-outcomes/draft-model'
export { EVIDENCE } from './3-outcomes/likeness'
export { ALTERNATIVES, CORRECT } from './3-outcomes/sureness-weights'
export { keyOf } from './words/keys'
export { lexiconWords } from './lexicon'
export {
  afterLearning,
  alike,
  learningEvidence,
  SHIFT_BOUND,
  shiftOf,
  type MarkedAnswer,
} from './3-outcomes/learning'
export { CORRECT_AFTER_LEARNING } from './3-outcomes/learning-weights'
