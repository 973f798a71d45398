import type { Token } from '../1-statements/tokens'
import { isDirectionWord, isNegation } from '../lexicon'
import { keyOf } from '../words/keys'
import { isDirectional } from '../words/relations'
import { isVerb, maybeVerb } from '../words/verbs'
import { DETERMINERS, isPlainVerb, isVerbAt } from './draft-verbs'
import { BORDERS, COPULAS, isContent } from './draft-words'

/** Content words in one idea after which a preposition begins the next, whatever stands before it. */
const LONG = 3

/** Prepositions that may begin an idea. */
export const PARTING: ReadonlySet<string> = new Set(
  'in into from to at with by along across through over under behind on for without'.split(' '),
)
/** `a rise in price`: the preposition belongs to the word before it. */
const TIED = /^(?:rise|fall|change|increase|decrease|drop|growth|reduction|gain|loss|amount)$/
/** Before a preposition they only colour it: `right across a bay`. */
const COLOURS = new Set('right straight just directly'.split(' '))
const IS = /^(?:is|are|was|were)$/
const NO_REASON = new Set('same such so as well known called'.split(' '))

/**
 * What a text says, in pieces: its subject, what is done with what, and each place, means or aim of it. A verb or a preposition begins a
 * piece; `of` never does.
 */
export function chunksOf(tokens: readonly Token[]): Token[][] {
  const chunks: Token[][] = [[]]
  // Only the first clause gives up its subject, however short: that is the thing the point is about.
  let first = true
  let verb = -1
  const here = () => chunks[chunks.length - 1]!
  const content = () => here().filter(isContent).length
  const open = () => {
    // `cannot travel`: what only denies goes with what it denies.
    if (content() > 0) chunks.push([])
  }
  const clause = () => {
    if (chunks.some((chunk) => chunk.some(isContent))) first = false
    open()
    verb = -1
  }
  for (const [i, token] of tokens.entries()) {
    if (token.kind === 'sign' || token.kind === 'break') {
      if (!/^[-'%"’]$/.test(token.text)) clause()
      continue
    }
    if (COLOURS.has(token.text) && PARTING.has(tokens[i + 1]?.text ?? '')) continue
    if (BORDERS.has(token.text) || token.text === 'without' || beginsReason(tokens, i)) clause()
    else if (token.text === 'and' && verb >= 0 && beginsClause(tokens, i)) clause()
    else if (verb < 0 && isVerbAt(tokens, i)) {
      if (first || content() > 1) open()
      verb = i
    } else if (PARTING.has(token.text) && parts(here(), tokens, i, verb)) open()
    // `behind a spit the water …`: first where, then what.
    else if (verb < 0 && /^(?:the|an?|its|their)$/.test(token.text) && isPlace(here())) open()
    here().push(token)
  }
  return withSubjects(chunks)
}

// `a bar forms`, `its cost is lower`: a verb with nothing else, and a mere degree, go back to what they tell of.
function withSubjects(chunks: readonly Token[][]): Token[][] {
  const joined: Token[][] = []
  for (const chunk of chunks) {
    const [own, ...more] = chunk.filter(isContent)
    const before = joined[joined.length - 1]
    const alone =
      own && more.length === 0 && !chunk.some(({ text }) => isNegation(text) || BORDERS.has(text))
    const does = alone && mayAct(own.text) && !chunk.some(({ text }) => IS.test(text))
    if (
      before &&
      follows(before, chunk) &&
      (does || (alone && isDegree(own.text) && before.filter(isContent).length > 1))
    )
      before.push(...chunk)
    else joined.push([...chunk])
  }
  return joined
}

// Nothing stands between them.
const follows = (one: readonly Token[], two: readonly Token[]): boolean => {
  const last = one[one.length - 1]
  const next = two[0]
  return (
    last !== undefined &&
    next !== undefined &&
    next.start - last.end <= 1 &&
    next.text !== 'and' &&
    !PARTING.has(next.text)
  )
}

const isPlace = ([first, ...rest]: readonly Token[]): boolean =>
  first !== undefined &&
  (PARTING.has(first.text) || isDirectionWord(first.text)) &&
  !rest.some(({ text }) => text === 'of' || text === 'and') &&
  rest.some(isContent)

/** Does the preposition at `i` begin a piece of its own? `verb`: where the verb of the clause stands, -1 where it has none yet. */
function parts(
  chunk: readonly Token[],
  tokens: readonly Token[],
  i: number,
  verb: number,
): boolean {
  const token = tokens[i]!
  if (i === 0) return false
  // `change it to`: the pronoun stands between.
  const before = tokens[tokens[i - 1]!.text === 'it' && i > 1 ? i - 2 : i - 1]!
  if (token.text === 'to' && chunk.some(({ text }) => text === 'from')) return false
  const own = chunk.filter(isContent)
  if (own.length >= LONG) return true
  if (verb < 0 || own.length === 0 || TIED.test(before.text)) return false
  // `faster in solids`: how much, of what it is said.
  if (isDegree(before.text) || isDirectionWord(before.text)) return false
  // `parallel to`, `grows out from the land`, `hard to put into words`: what has no object keeps its first preposition.
  const told = tokens.slice(verb + 1, i).filter(isContent).length
  const helps = COPULAS.has(tokens[verb]!.text) || isNegation(tokens[verb]!.text)
  return told > (helps ? 1 : 0) && tokens[i - 2]?.text !== 'to'
}

/** `lower`, `faster`: it has an opposite. */
const isDegree = (word: string): boolean => isDirectional(keyOf(word))
const mayAct = (word: string): boolean => isVerb(word) || maybeVerb(word)

// `slows down as the reactants are used up`, but not `the same as`.
function beginsReason(tokens: readonly Token[], i: number): boolean {
  return (
    i > 0 &&
    tokens[i]!.text === 'as' &&
    !NO_REASON.has(tokens[i - 1]!.text) &&
    DETERMINERS.has(tokens[i + 1]?.text ?? '') &&
    beginsClause(tokens, i)
  )
}

/** Tokens after a joint within which the verb of its clause comes. */
const VERB_WITHIN = 9

// `and cuts off a lagoon`, `and the mean is taken`: a verb follows before anything else is joined.
function beginsClause(tokens: readonly Token[], i: number): boolean {
  for (let k = i + 1; k < Math.min(tokens.length, i + VERB_WITHIN); k += 1) {
    const { kind, text } = tokens[k]!
    if (kind !== 'word' || text === 'and' || text === 'or' || BORDERS.has(text)) return false
    if (
      k === i + 1 || tokens[k - 1]!.text === 'then' ? isVerbAt(tokens, k) : isPlainVerb(tokens, k)
    )
      return true
  }
  return false
}
