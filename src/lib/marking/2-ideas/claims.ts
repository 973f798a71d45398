import type { ReadPage } from '../1-statements/page'
import { speltOut, type Spelt } from '../1-statements/spelt'
import type { Statement } from '../1-statements/statements'
import { compareReactions, mayReact, reactionIn } from '../quantities/chemistry'
import { equationsIn, mayHold } from '../quantities/equation-text'
import { numbersIn } from '../quantities/numbers'
import { mayTell } from '../quantities/reaction-names'
import { valuesIn } from '../quantities/value-text'
import { formulaNamed } from '../lexicon/formula'
import type { IdeaMark } from '../types'
import type { Finder } from './find'
import { overlap, type Occurrence } from './occurrence'
import type { ReadyPoint } from './ready'
import type { ReadyIdea } from './ready-idea'

/** One thing a point needs, and every place that says it (sign 1) or says it wrongly (sign -1). */
export interface Claim {
  readonly label: string
  readonly kind: IdeaMark['kind']
  readonly idea?: ReadyIdea
  /** In the order of their statements. */
  readonly occurrences: readonly Occurrence[]
  /** The right number without its unit: half of the claim. */
  readonly halves: readonly Occurrence[]
}

/** What is found of a claim in one statement, or from one up to another. */
export function foundIn({ occurrences }: Claim, from: number, to = from): readonly Occurrence[] {
  let low = 0
  let high = occurrences.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (occurrences[middle]!.statement < from) low = middle + 1
    else high = middle
  }
  let end = low
  while (end < occurrences.length && occurrences[end]!.statement <= to) end += 1
  return end === low ? NONE : occurrences.slice(low, end)
}
const NONE: readonly never[] = []

/** All claims of a point, in the point's order: ideas or steps, then the equation, then the value. */
export function claimsOf(point: ReadyPoint, finder: Finder): Claim[] {
  const { page } = finder
  const claims: Claim[] = point.ideas.map((idea) => ({
    label: idea.idea.written,
    kind: idea.kind,
    idea,
    occurrences: finder.occurrences(idea),
    halves: [],
  }))
  const { equation, value } = point.point
  if (equation && (point.equation || point.reaction)) {
    claims.push({
      label: equation.written,
      kind: 'equation',
      occurrences: equations(point, page),
      halves: [],
    })
  }
  if (value && point.value) {
    const all = ownValues(page, claims, values(point, page))
    claims.push({
      label: value.written,
      kind: 'value',
      occurrences: all.filter((o) => o.strength === 1),
      halves: all.filter((o) => o.strength === 0.5 && o.sign === 1),
    })
  }
  return claims
}

const OPERATOR =
  /[=×*÷/→⇌+]|->|\b(?:x|equals?|times|multipl\w+|divid\w+|over|per|product|ratio|sum|plus|minus|difference|subtract\w*|add\w*|doubl\w+|twice|half|forms?|gives?|makes?|produces?)\b/i

function equations(point: ReadyPoint, page: ReadPage): Occurrence[] {
  const found: Occurrence[] = []
  const { withSigns, withArrows } = statementsOf(page)
  for (const statement of point.equation ? withSigns : withArrows) {
    if (point.equation) {
      if (!mayHold(point.equation, page, statement)) continue
      const hits = equationsIn(point.equation, page.tokens, page.text, statement).map((hit) =>
        occurrenceAt(page, statement, hit.span, hit.right ? 1 : -1, 1),
      )
      // Cut short or long, one equation is read more than once: the right reading stands for those that overlap it.
      const right = hits.filter((o) => o.sign === 1)
      found.push(
        ...right,
        ...hits.filter((o) => o.sign === -1 && !right.some((r) => overlap(r, o))),
      )
    } else if (point.reaction) {
      const text = page.text.slice(statement.start, statement.end)
      if (!mayTell(point.reaction, text)) continue
      const hit = reactionIn(text, point.reaction.species, formulaNamed)
      if (!hit) continue
      const same = compareReactions(hit, point.reaction)
      const span = { start: statement.start + hit.span.start, end: statement.start + hit.span.end }
      // A reaction with other species is another reaction and says nothing of this one.
      if (same !== 'other')
        found.push(occurrenceAt(page, statement, span, same === 'same' ? 1 : -1, 1))
    }
  }
  return found
}

interface Told extends Spelt {
  readonly statement: Statement
}

/** The statements that could be mathematics, a reaction or a value; most are none, and every point that asks for one asks. */
interface Quantitative {
  readonly withSigns: readonly Statement[]
  readonly withArrows: readonly Statement[]
  readonly withNumbers: readonly Told[]
}

function statementsOf(page: ReadPage): Quantitative {
  const known = quantitative.get(page)
  if (known) return known
  const told = page.statements.map((statement) => ({ ...speltOut(page, statement), statement }))
  const withSigns = told.filter(({ text }) => OPERATOR.test(text)).map(({ statement }) => statement)
  const made = {
    withSigns,
    withArrows: withSigns.filter(({ start, end }) => mayReact(page.text.slice(start, end))),
    withNumbers: told.filter(({ text }) => numbersIn(text).length > 0),
  }
  quantitative.set(page, made)
  return made
}
const quantitative = new WeakMap<ReadPage, Quantitative>()

function values(point: ReadyPoint, page: ReadPage): Occurrence[] {
  return statementsOf(page).withNumbers.flatMap(({ statement, text, placeOf }) =>
    valuesIn(point.value!, text).map(({ says, span }) =>
      occurrenceAt(
        page,
        statement,
        { start: placeOf(span.start), end: placeOf(span.end) },
        says === 'wrong' ? -1 : 1,
        says === 'no unit' ? 0.5 : 1,
      ),
    ),
  )
}

/**
 * `water boils at 78 °C, ethanol at 100 °C`: a value belongs to the part of the statement in which the ideas of the point stand, if
 * that part has one; the values of other parts are of other things.
 */
function ownValues(
  page: ReadPage,
  ideas: readonly Claim[],
  found: readonly Occurrence[],
): Occurrence[] {
  return found.filter((o) => {
    const here = found.filter((other) => other.statement === o.statement)
    if (here.length < 2) return true
    const part = partsOf(page, page.statements[o.statement]!)
    const told = new Set(
      ideas.flatMap(({ occurrences }) =>
        occurrences
          .filter((x) => x.statement === o.statement && x.sign === 1)
          .map((x) => new Set(x.at.map(({ from }) => part(from))))
          .flatMap((parts) => (parts.size === 1 ? [...parts] : [])),
      ),
    )
    const own = here.filter((other) => told.has(part(other.at[0]!.from)))
    return own.length === 0 || own.includes(o)
  })
}

const TIES = new Set(
  '= : -> ( ) - because so which when if as since where then therefore'.split(' '),
)

function partsOf(page: ReadPage, statement: Statement): (token: number) => number {
  const parts = new Map<number, number>()
  let part = 0
  for (let i = statement.from; i < statement.to; i += 1) {
    const changes = i > statement.from && page.clauseOf[i] !== page.clauseOf[i - 1]
    if (changes && !TIES.has(page.tokens[i]!.text)) part += 1
    parts.set(i, part)
  }
  return (token) => parts.get(token) ?? -1
}

/** `not over 5 m` gives the value as a limit and does not deny it. */
const LIMIT = new Set('over above under below exceed exceeding beyond past'.split(' '))

function occurrenceAt(
  page: ReadPage,
  statement: Statement,
  span: { readonly start: number; readonly end: number },
  sign: 1 | -1,
  strength: number,
): Occurrence {
  let from = statement.from
  while (from < statement.to - 1 && page.tokens[from]!.end <= span.start) from += 1
  let to = from + 1
  while (to < statement.to && page.tokens[to]!.start < span.end) to += 1
  // What is withdrawn counts for nothing, and what is denied says the opposite.
  const withdrawn = page.struck.subarray(from, to).some((s) => s === 2)
  // The denial stands in it or right before it; one further off is of something else in the clause.
  const denied =
    page.negated
      .subarray(from, to)
      .some((n, k) => n === 1 && page.negatedBy[from + k]! >= from - 3) &&
    !LIMIT.has(page.tokens[from - 1]?.text ?? '') &&
    page.tokens[from - 1]?.text !== 'than'
  return {
    statement: statement.index,
    strength: withdrawn ? 0 : strength,
    sign: denied ? (sign === 1 ? -1 : 1) : sign,
    turned: denied ? 'negated' : undefined,
    at: [{ from, to }],
    directional: false,
    content: 2,
    opposites: 0,
    denied: false,
    slots: 0,
  }
}
