export type { Clash, IdeaMark, Outcome, PointMark, Report, Span } from './types'
export { mark, MARKER } from './mark'
