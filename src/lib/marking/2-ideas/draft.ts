import { readIdea } from '../../syllabus/notation'
import type { Idea, Point, Topic } from '../../syllabus/types'
import { tokenise, type Token } from '../1-statements/tokens'
import { isDirectionWord, isFiller, isNegation, isStopWord } from '../lexicon'
import { keyOf } from '../words/keys'

/** Content words in one drafted idea at the most; a longer clause is parted at a preposition. */
const LONGEST = 4

const BORDERS = new Set(
  'that which who where when whereas while because since so but although if until unless and then to by for as into from with than'.split(' '),
)
const COPULAS = new Set(['is', 'are', 'means', 'was', 'were', 'consists', 'refers'])

/**
 * Key ideas for a point whose author gave none, in the mark scheme's notation, so that they can be shown and edited:
 * the term that is defined, then what each clause says of it, in the text's own words without its filler.
 */
export function draftIdeas(point: Point, topic: Topic): Idea[] {
  const given = new Set(tokenise(topic.title).map((t) => keyOf(t.text)))
  const drafted = clausesOf(point.text)
    .map((clause) => written(clause, given))
    .filter((idea, i, all) => idea !== '' && all.indexOf(idea) === i)
  if (drafted.length === 0) {
    // Nothing but the title's words and filler: then those are the point.
    const words = tokenise(point.text).filter((t) => t.kind === 'word' || t.kind === 'number')
    return words.length === 0 ? [] : [readIdea(words.map((t) => t.text).join(' '))]
  }
  return drafted.map(readIdea)
}

/** The words of each clause, borders left out. */
function clausesOf(text: string): Token[][] {
  const clauses: Token[][] = [[]]
  let defined = false
  const tokens = tokenise(text)
  for (const [i, token] of tokens.entries()) {
    const clause = clauses[clauses.length - 1]!
    const content = clause.filter((t) => isContent(t)).length
    if (token.kind === 'sign' || token.kind === 'break') {
      if (token.text !== '-' && token.text !== "'" && content > 0) clauses.push([])
      continue
    }
    if (!defined && COPULAS.has(token.text) && content > 0 && content <= 3) {
      defined = true
      clauses.push([])
      continue
    }
    const strong = STRONG.has(token.text)
    if (BORDERS.has(token.text) && content > 0 && (strong ? content >= 1 : content >= 2)) {
      const between = token.text === 'and' && joinsNouns(tokens, i)
      if (!between) clauses.push([])
    } else if (content >= LONGEST && isDirectionWord(token.text)) clauses.push([])
    clauses[clauses.length - 1]!.push(token)
  }
  return clauses
}

const STRONG = new Set('that which who where when whereas while because since so but although if until unless'.split(' '))

// `sand and shingle`: a short `and` joins words, not clauses.
function joinsNouns(tokens: readonly Token[], i: number): boolean {
  const next = tokens[i + 2]
  return next === undefined || next.kind !== 'word' || isStopWord(next.text) || isDirectionWord(next.text)
}

function isContent(token: Token): boolean {
  return (
    token.kind === 'number' ||
    (token.kind === 'word' && !isStopWord(token.text) && !isFiller(token.text) && !isDirectionWord(token.text) && !BORDERS.has(token.text) && !isNegation(token.text))
  )
}

function written(clause: readonly Token[], given: ReadonlySet<string>): string {
  const content = clause.filter(isContent)
  const own = content.filter((token) => !given.has(keyOf(token.text)))
  if (own.length === 0) return ''
  const kept = clause.filter(
    (token) =>
      isNegation(token.text) ||
      isDirectionWord(token.text) ||
      (isContent(token) && (!given.has(keyOf(token.text)) || own.length < 2)),
  )
  while (kept.length > 0 && !isContent(kept[kept.length - 1]!) && !isDirectionWord(kept[kept.length - 1]!.text)) kept.pop()
  const alternatives = alternativesIn(clause)
  const words = kept.map((token) => token.text)
  if (!alternatives) return words.join(' ')
  const [one, two] = alternatives
  return [words.filter((w) => w !== one && w !== two).join(' '), `${one} / ${two}`].filter(Boolean).join(' + ')
}

function alternativesIn(clause: readonly Token[]): readonly [string, string] | undefined {
  const i = clause.findIndex((token) => token.text === 'or')
  const [one, two] = [clause[i - 1], clause[i + 1]]
  if (i < 1 || !one || !two || !isContent(one) || !isContent(two)) return undefined
  return [one.text, two.text]
}
