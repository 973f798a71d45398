import { readIdea } from '../../syllabus/notation'
import type { Idea, Point, Topic, Value } from '../../syllabus/types'
import { tokenise, type Token } from '../1-statements/tokens'
import { keyOf } from '../words/keys'
import { chunksOf } from './draft-chunks'
import { contrasted } from './draft-contrast'
import { draftEquation, type DraftedEquation } from './draft-equation'
import { stepTexts } from './draft-steps'
import { draftValue } from './draft-value'
import { hyphenated } from './draft-words'
import { written } from './draft-written'

/** What marks a point whose author gave nothing but its text. */
export interface Draft {
  readonly ideas: readonly Idea[]
  /** How many of the ideas are asked for; absent: all. */
  readonly any?: number
  readonly steps?: readonly Idea[]
  readonly value?: Value
  readonly equation?: DraftedEquation
}

/**
 * A draft of everything that the text of a point asks for: the equation that it puts into words, the steps that it lists, the value that it
 * states, and the ideas of the rest. A value of the author's own stays.
 */
export function draftOf(point: Point, topic: Topic): Draft {
  const asked = ASKS.exec(point.text)?.groups
  // A list without its answers: nothing on the page can be held against it.
  if (asked) return listOf(asked.many!, asked.answers)
  const equation = draftEquation(point.text)
  if (equation) return { ideas: [], equation }
  const given = keysOf(topic.title)
  const steps = stepTexts(point.text).map((step) => {
    return readIdea(written(hyphenated(tokenise(step)), given) || plainWords(step))
  })
  if (steps.length > 0 && steps.every((step) => step.written !== '')) return { ideas: [], steps }
  const found = point.value ? undefined : draftValue(point.text)
  if (!found) return { ideas: draftIdeas(point, topic) }
  const { start, end } = found.at
  const rest = point.text.slice(0, start) + ' '.repeat(end - start) + point.text.slice(end)
  return { ideas: draftIdeas({ ...point, text: rest }, topic), value: found.value }
}

const ASKS =
  /^(?:give|name|state|list|describe|identify|suggest|outline)\s+(?:any\s+)?(?<many>one|two|three|four|five|six|[1-9])\b[^:]*(?::\s*(?<answers>.+?)\.?)?$/is
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six']

// `Name two fixed costs: rent, insurance or a licence fee`: any two of the answers.
function listOf(many: string, answers: string | undefined): Draft {
  const ideas = (answers ?? '')
    .split(/\s*[,;]\s*(?:(?:or|and)\s+)?|\s+(?:or|and)\s+/)
    .map(plainWords)
    .filter(Boolean)
    .map((answer) => readIdea(answer))
  const any = COUNTS.indexOf(many.toLowerCase()) + 1 || Number(many)
  return ideas.length >= any ? { ideas, any } : { ideas: [] }
}

const keysOf = (text: string) => new Set(tokenise(text).map((t) => keyOf(t.text)))
const plainWords = (text: string): string =>
  tokenise(text)
    .filter((t) => t.kind === 'word' && !/^(?:an?|the|on|its|their)$/.test(t.text))
    .map((t) => t.text)
    .join(' ')

/**
 * Key ideas for a point whose author gave none, in the mark scheme's notation, so that they can be shown and edited:
 * the thing that is spoken of, then what each clause says of it, in the text's own words without its filler.
 */
export function draftIdeas(point: Point, topic: Topic): Idea[] {
  const given = keysOf(topic.title)
  const drafted = hyphenatedSentences(point.text)
    .flatMap(
      (clause) => contrasted(clause) ?? chunksOf(clause).map((chunk) => written(chunk, given)),
    )
    .filter((idea, i, all) => idea !== '' && all.indexOf(idea) === i)
  if (drafted.length > 0) return drafted.map(readIdea)
  // Nothing but the title's words and filler: then those are the point.
  const words = tokenise(point.text).filter((t) => t.kind === 'word' || t.kind === 'number')
  return words.length === 0 ? [] : [readIdea(words.map((t) => t.text).join(' '))]
}

// Each sentence is read by itself.
function hyphenatedSentences(text: string): Token[][] {
  const clauses: Token[][] = [[]]
  for (const token of hyphenated(tokenise(text))) {
    if (token.text === '.') clauses.push([])
    else clauses[clauses.length - 1]!.push(token)
  }
  return clauses.filter((clause) => clause.length > 0)
}
