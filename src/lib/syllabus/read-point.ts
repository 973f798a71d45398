import { isMap, isScalar } from 'yaml'
import {
  fieldsOf,
  itemsOf,
  lineOf,
  notationOf,
  report,
  textOf,
  within,
  type Field,
  type NamedField,
  type Reading,
} from './fields'
import { readIdea } from './notation'
import { readEquation } from './read-equation'
import type { Idea, Point } from './types'
import { readValue } from './value'

const SHAPE = {
  required: ['ref', 'text'],
  optional: ['cue', 'ideas', 'any', 'reject', 'equation', 'where', 'value', 'steps'],
} as const

/** Refs read so far, with their lines. */
export type Seen = Map<string, number>

/** `number` counts the topic's points from 1. What is returned is whole only if nothing was reported. */
export function readPoint(
  reading: Reading,
  topic: string,
  item: Field,
  number: number,
  seen: Seen,
): Point | undefined {
  const field = { ...item, where: within(topic, pointName(item, number)) }
  const fields = fieldsOf(reading, field, SHAPE)
  if (!fields) return undefined
  const take = <T>(name: string, read: (reading: Reading, field: NamedField) => T | undefined) => {
    const found = fields.get(name)
    return found && read(reading, found)
  }
  const ref = take('ref', (r, f) => refOf(r, f, seen))
  const text = take('text', textOf)?.text
  const cue = take('cue', (r, f) => cueOf(r, f, text))
  const ideas = take('ideas', ideasOf)
  const any = take('any', (r, f) => anyOf(r, f, fields.get('ideas')))
  const reject = take('reject', textsOf)
  const where = fields.get('where')
  const equation = take('equation', (r, f) => readEquation(r, f, where))
  if (where && !fields.has('equation')) {
    report(
      reading,
      where.nameAt,
      where.where,
      '"where" explains the symbols of an equation, but there is no "equation".',
    )
  }
  const value = take('value', (r, f) => {
    const written = textOf(r, f)
    return written && notationOf(r, written, readValue)
  })
  const steps = take('steps', ideasOf)
  stepsAlone(reading, fields)
  if (ref === undefined || text === undefined) return undefined
  return {
    ref,
    text,
    ...(cue !== undefined && { cue }),
    ideas: ideas ?? [],
    ...(any !== undefined && { any }),
    ...(reject && { reject }),
    ...(equation && { equation }),
    ...(value && { value }),
    ...(steps && { steps }),
  }
}

function pointName({ node }: Field, number: number): string {
  const ref: unknown = isMap(node) ? node.get('ref', true) : undefined
  const source = isScalar(ref) ? ref.source?.trim() : undefined
  return source && source.length <= 40 ? `point ${source}` : `point no. ${number}`
}

function refOf(reading: Reading, field: NamedField, seen: Seen): string | undefined {
  const { node, at, where } = field
  if (isScalar(node) && node.value !== null && typeof node.value !== 'string') {
    const source = node.source ?? String(node.value)
    return report(
      reading,
      at,
      where,
      `Put it between quotation marks, ref: "${source}": without them YAML takes a number, and 2.10 would become 2.1.`,
    )
  }
  const ref = lineOf(reading, field)?.text
  if (ref === undefined) return undefined
  const first = seen.get(ref)
  if (first !== undefined) {
    return report(
      reading,
      at,
      where,
      `The ref ${ref} is taken, in line ${first}: each point needs its own.`,
    )
  }
  seen.set(ref, reading.placeOf(at).line)
  return ref
}

// Whoever copies the text as its cue would ask a question that answers itself.
function cueOf(reading: Reading, field: NamedField, text: string | undefined): string | undefined {
  const cue = lineOf(reading, field)
  if (cue && text !== undefined && sayTheSame(cue.text, text)) {
    return report(
      reading,
      cue.at,
      cue.where,
      'The cue is the text itself and gives the point away: a question was expected.',
    )
  }
  return cue?.text
}

function sayTheSame(a: string, b: string): boolean {
  const words = (text: string) =>
    text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim()
  return a === b || (words(a) !== '' && words(a) === words(b))
}

function ideasOf(reading: Reading, field: Field): Idea[] | undefined {
  return itemsOf(reading, field)?.flatMap((item) => {
    const text = textOf(reading, item)
    const idea = text && notationOf(reading, text, readIdea)
    return idea ? [idea] : []
  })
}

function textsOf(reading: Reading, field: Field): string[] | undefined {
  return itemsOf(reading, field)?.flatMap((item) => textOf(reading, item)?.text ?? [])
}

function anyOf(
  reading: Reading,
  { node, at, where, nameAt }: NamedField,
  ideas: Field | undefined,
) {
  const any: unknown = isScalar(node) ? node.value : undefined
  if (typeof any !== 'number' || !Number.isInteger(any) || any < 1) {
    return report(
      reading,
      at,
      where,
      'A whole number from 1 was expected, without quotation marks: how many ideas are enough.',
    )
  }
  if (!ideas) {
    return report(
      reading,
      nameAt,
      where,
      '"any" says how many of the ideas are enough, but there are no "ideas".',
    )
  }
  const count = isMap(ideas.node) || isScalar(ideas.node) ? undefined : countOf(ideas)
  if (count !== undefined && any > count) {
    return report(reading, at, where, `"any" asks for ${any} ideas, but there are only ${count}.`)
  }
  return any
}

const countOf = ({ node }: Field): number | undefined =>
  node && 'items' in node && Array.isArray(node.items) ? node.items.length : undefined

// A method's steps are marked by their order; other ideas beside them would have no place in it.
function stepsAlone(reading: Reading, fields: ReadonlyMap<string, NamedField>): void {
  if (!fields.has('steps')) return
  for (const name of ['ideas', 'any', 'equation', 'value']) {
    const other = fields.get(name)
    if (other) {
      report(
        reading,
        other.nameAt,
        other.where,
        `"steps" and "${name}" cannot be in one point: make two points of it.`,
      )
    }
  }
}
