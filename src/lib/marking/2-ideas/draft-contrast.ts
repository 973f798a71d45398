import type { Token } from '../1-statements/tokens'
import { isDirectionWord, isFiller, isNegation } from '../lexicon'
import { isVerb } from '../words/verbs'
import { isVerbAt } from './draft-verbs'
import { COPULAS, GOES, isContent } from './draft-words'

/** Content words of each part of a contrast. */
const LONGEST = 4

const HALVES = new Set(['and', 'whereas', 'while', 'whilst', ';', 'but'])

/**
 * Two things, each with what is said of it: one idea for each, so that neither is said without the other; `undefined` for any other
 * clause.
 */
export function contrasted(clause: readonly Token[]): string[] | undefined {
  for (const [i, token] of clause.entries()) {
    if (!HALVES.has(token.text)) continue
    const [left, right] = [clause.slice(0, i), clause.slice(i + 1)]
    const ideas =
      bySameLink(left, right) ?? (token.text === 'and' ? undefined : byVerbs(left, right))
    if (ideas) return ideas
  }
  return undefined
}

// `pink in alkali and colourless in acid`, `… by sound and … by meaning`: the same preposition in both halves.
function bySameLink(left: readonly Token[], right: readonly Token[]): string[] | undefined {
  const k = right.findIndex((t, i) => LINKS.has(t.text) && !isInfinitive(right, i))
  if (k < 1) return undefined
  const j = left.map((t) => t.text).lastIndexOf(right[k]!.text)
  if (j < 1) return undefined
  const copula = left
    .slice(0, j)
    .map((_, i) => isVerbAt(left, i))
    .lastIndexOf(true)
  const subject = contentOf(left.slice(0, Math.max(0, copula)))
  const things = contentOf(left.slice(copula + 1, j))
  const own = things.length > 0 && copula > 0
  const ideas = plus(
    own || copula <= 0 ? things : subject,
    left.slice(j + 1),
    right.slice(0, k),
    right.slice(k + 1),
  )
  return ideas && [...(own && subject.length > 0 ? [subject.join(' ')] : []), ...ideas]
}

// `A larger amplitude makes it louder; a higher frequency gives a higher pitch`: a verb in the midst of both halves.
function byVerbs(left: readonly Token[], right: readonly Token[]): string[] | undefined {
  const [j, k] = [left, right].map((half) =>
    half.findIndex(
      (t, i) => (COPULAS.has(t.text) || isVerb(t.text)) && contentOf(half.slice(0, i)).length > 0,
    ),
  ) as [number, number]
  if (j < 1 || k < 1) return undefined
  return plus(contentOf(left.slice(0, j)), left.slice(j + 1), right.slice(0, k), right.slice(k + 1))
}

function plus(
  thing: readonly string[],
  said: readonly Token[],
  otherThing: readonly Token[],
  otherSaid: readonly Token[],
): string[] | undefined {
  const parts = [thing, saidOf(said), contentOf(otherThing), saidOf(otherSaid)]
  if (parts.some((words) => words.length === 0 || words.length > LONGEST)) return undefined
  const [a, b, c, d] = parts.map((words) => words.join(' '))
  return [`${a} + ${b}`, `${c} + ${d}`]
}
// `hard to put into words`: no `to` of a place or a person.
const isInfinitive = (tokens: readonly Token[], i: number): boolean =>
  tokens[i]!.text === 'to' && isVerb(tokens[i + 1]?.text ?? '')

const LINKS = new Set('in by for at of from to with'.split(' '))

const contentOf = (tokens: readonly Token[]): string[] =>
  tokens.filter((t) => isContent(t) || isDegree(t.text)).map((t) => t.text)
// Where there is nothing but filler, that is what is said (`mainly by meaning`).
function saidOf(tokens: readonly Token[]): string[] {
  const content = contentOf(tokens)
  const last = tokens[tokens.length - 1]
  return content.length === 0 && last && isFiller(last.text) ? [last.text] : content
}
const isDegree = (word: string) =>
  !isFiller(word) && (isDirectionWord(word) ? GOES.has(word) : isNegation(word))
