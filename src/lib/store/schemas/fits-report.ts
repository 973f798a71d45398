/** Whether a value fits the schema `report`, told many times faster: files hold thousands. A property test holds the two together. */
type Fields = Readonly<Record<string, unknown>>

const fields = (value: unknown): value is Fields => typeof value === 'object' && value !== null
const text = (value: unknown) => typeof value === 'string'
const yesNo = (value: unknown) => typeof value === 'boolean'
const count = (value: unknown) => Number.isSafeInteger(value) && (value as number) >= 0
const share = (value: unknown) => typeof value === 'number' && value >= 0 && value <= 1
const listOf = (value: unknown, fits: (one: unknown) => boolean) =>
  Array.isArray(value) && value.every(fits)
const ifThere = (value: unknown, fits: (one: unknown) => boolean) =>
  value === undefined || fits(value)

const OUTCOMES: readonly unknown[] = ['full', 'partial', 'missed', 'contradicted']
const IDEAS: readonly unknown[] = ['idea', 'step', 'equation', 'value']
const CLASHES: readonly unknown[] = [
  'rejected',
  'negated',
  'opposite',
  'swapped',
  'value',
  'equation',
  'order',
]

const span = (value: unknown): boolean => fields(value) && count(value.start) && count(value.end)

const idea = (value: unknown): boolean =>
  fields(value) &&
  text(value.idea) &&
  IDEAS.includes(value.kind) &&
  yesNo(value.found) &&
  listOf(value.spans, span)

const clash = (value: unknown): boolean =>
  fields(value) &&
  span(value.statement) &&
  span(value.words) &&
  text(value.against) &&
  CLASHES.includes(value.kind)

const point = (value: unknown): boolean =>
  fields(value) &&
  text(value.ref) &&
  OUTCOMES.includes(value.outcome) &&
  listOf(value.ideas, idea) &&
  yesNo(value.drafted) &&
  ifThere(value.nearest, span) &&
  yesNo(value.offered) &&
  ifThere(value.clash, clash) &&
  share(value.sureness) &&
  text(value.why)

export const fitsReport = (value: unknown): boolean =>
  fields(value) &&
  text(value.marker) &&
  text(value.topic) &&
  listOf(value.points, point) &&
  listOf(value.statements, span) &&
  listOf(value.beyond, span)
