import { isAlias, isMap, isNode, isScalar, isSeq, type Node, type Scalar } from 'yaml'
import { nearest } from './nearest'
import { NotationError } from './notation-error'
import { offsetInSource } from './positions'
import type { PlaceOf, SyllabusMistake } from './source'

/** One file while it is read: its text, and the mistakes found so far. */
export interface Reading {
  readonly source: string
  readonly placeOf: PlaceOf
  readonly mistakes: SyllabusMistake[]
}

/** A value of the file, before it is known what it is. */
export interface Field {
  readonly node: Node | null
  /** Offset where a mistake about the whole value is shown. */
  readonly at: number
  /** As in SyllabusMistake. */
  readonly where: string
}

export interface NamedField extends Field {
  readonly name: string
  readonly nameAt: number
}

export interface Text {
  /** Without space around it. */
  readonly text: string
  readonly scalar: Scalar
  readonly where: string
  readonly at: number
}

export function report(reading: Reading, at: number, where: string, message: string): undefined {
  reading.mistakes.push({ ...reading.placeOf(at), where, message })
}

/** What a mistake calls a field or item inside `where`. */
export const within = (where: string, part: string): string =>
  where === '' ? part : `${where}, ${part}`

/** Every field of a mapping, in order; undefined, and reported, where it is none. Each name comes once. */
export function entriesOf(reading: Reading, field: Field): NamedField[] | undefined {
  const { node, at, where } = field
  if (!isMap(node))
    return report(reading, at, where, `Fields (name: value) were expected, not ${kindOf(node)}.`)
  const entries = new Map<string, NamedField>()
  for (const pair of node.items) {
    const key: unknown = pair.key
    const nameAt = isNode(key) ? (key.range?.[0] ?? at) : at
    if (!isScalar(key) || nameOf(key) === '') {
      report(reading, nameAt, where, 'The name of a field was expected before the colon.')
      continue
    }
    const name = nameOf(key)
    const first = entries.get(name)
    if (first) {
      const { line } = reading.placeOf(first.nameAt)
      report(
        reading,
        nameAt,
        where,
        `"${name}" stands here a second time; the first is in line ${line}.`,
      )
    } else if (name === '__proto__') {
      report(reading, nameAt, where, '"__proto__" cannot be a name here.')
    } else {
      const value = isNode(pair.value) ? pair.value : null
      const valueAt = value?.range?.[0] ?? nameAt
      entries.set(name, { node: value, at: valueAt, where: within(where, name), name, nameAt })
    }
  }
  return [...entries.values()]
}

// A number, true or null as a name is taken as it is written.
const nameOf = (key: Scalar): string =>
  typeof key.value === 'string' ? key.value : (key.source ?? '')

/** The fields of a mapping by name. Unknown and missing ones are reported; undefined where it is no mapping. */
export function fieldsOf(
  reading: Reading,
  field: Field,
  shape: { readonly required: readonly string[]; readonly optional: readonly string[] },
): ReadonlyMap<string, NamedField> | undefined {
  const entries = entriesOf(reading, field)
  if (!entries) return undefined
  const known = [...shape.required, ...shape.optional]
  const fields = new Map<string, NamedField>()
  for (const entry of entries) {
    if (known.includes(entry.name)) fields.set(entry.name, entry)
    else report(reading, entry.nameAt, field.where, unknownField(entry.name, known))
  }
  for (const name of shape.required.filter((name) => !fields.has(name))) {
    report(reading, field.at, field.where, `The field "${name}" is missing.`)
  }
  return fields
}

function unknownField(name: string, known: readonly string[]): string {
  const meant = nearest(name, known)
  const shown = name.length > 40 ? `${name.slice(0, 40)}…` : name
  const hint = meant ? `Did you mean "${meant}"?` : `Known fields here: ${known.join(', ')}.`
  return `Unknown field "${shown}". ${hint}`
}

/** The items of a list with at least one; undefined, and reported, where it is none. */
export function itemsOf(reading: Reading, field: Field): Field[] | undefined {
  const { node, at, where } = field
  if (!isSeq(node)) {
    return report(
      reading,
      at,
      where,
      `A list (each item on a line of its own after "- ") was expected, not ${kindOf(node)}.`,
    )
  }
  if (node.items.length === 0)
    return report(reading, at, where, 'The list is empty: at least one item was expected.')
  return node.items.map((item, i) => {
    const value = isNode(item) ? item : null
    return { node: value, at: value?.range?.[0] ?? at, where: `${where}[${i + 1}]` }
  })
}

/** A text as it stands in the file: a number without quotes is taken digit for digit. */
export function textOf(reading: Reading, field: Field): Text | undefined {
  const { node, at, where } = field
  if (!isScalar(node))
    return report(reading, at, where, `A text was expected, not ${kindOf(node)}.`)
  if (node.value === null && node.source) {
    return report(
      reading,
      at,
      where,
      `YAML reads ${node.source} as nothing: put it between quotation marks.`,
    )
  }
  const text = (node.source ?? '').trim()
  if (text === '') return report(reading, at, where, 'Nothing stands here: a text was expected.')
  return { text, scalar: node, where, at }
}

/** A text on one line, of at most 200 characters. */
export function lineOf(reading: Reading, field: Field): Text | undefined {
  const read = textOf(reading, field)
  if (read && /[\n\r]/.test(read.text))
    return report(reading, read.at, read.where, 'One line was expected, not several.')
  if (read && read.text.length > 200) {
    return report(
      reading,
      read.at,
      read.where,
      `${read.text.length} characters: at most 200 were expected.`,
    )
  }
  return read
}

/** Reads a text's own notation; a mistake in it is reported where it stands within the text. */
export function notationOf<T>(
  reading: Reading,
  text: Text,
  read: (text: string) => T,
): T | undefined {
  try {
    return read(text.text)
  } catch (error) {
    if (!(error instanceof NotationError)) throw error
    return report(reading, offsetIn(reading, text, error.offset), text.where, error.message)
  }
}

/** Offset in the file of a character of a text. */
export function offsetIn(reading: Reading, { text, scalar }: Text, at: number): number {
  const whole = scalar.source ?? text
  return offsetInSource(reading.source, scalar, whole, whole.length - whole.trimStart().length + at)
}

function kindOf(node: Node | null): string {
  if (isMap(node))
    return 'fields. A text that holds ": " or begins with { goes between quotation marks'
  if (isSeq(node)) return 'a list. A text that begins with [ goes between quotation marks'
  if (isAlias(node))
    return 'the short form *name of YAML: write it out, or put the text between quotation marks'
  if (!isScalar(node) || node.value === null) return 'nothing'
  return typeof node.value === 'string'
    ? 'a text'
    : `the ${typeof node.value} ${node.source ?? ''}`.trim()
}
