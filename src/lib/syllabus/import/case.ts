/**
 * A package of 1EdTech Competencies and Academic Standards Exchange (CASE) 1.1 as JSON -> a draft. Classes CFPackage,
 * CFPckgDocument, CFPckgItem, CFPckgAssociation of its information model; 1.0 packages have the same fields here.
 */
import * as v from 'valibot'
import { readPointFields } from './point-fields'
import { treeFrom } from './tree'
import type { DraftLine, DraftRead, DraftWarning, Place } from './types'

const text = v.pipe(v.string(), v.maxLength(20_000))
const node = v.object({ identifier: v.pipe(v.string(), v.nonEmpty()) })
const item = v.object({
  identifier: v.pipe(v.string(), v.nonEmpty()),
  fullStatement: text,
  abbreviatedStatement: v.nullish(text),
  humanCodingScheme: v.nullish(text),
  conceptKeywords: v.nullish(v.array(text)),
  extensions: v.nullish(v.record(v.string(), v.unknown())),
})
const packageSchema = v.object({
  CFDocument: v.object({
    identifier: v.pipe(v.string(), v.nonEmpty()),
    title: text,
    notes: v.nullish(text),
    description: v.nullish(text),
  }),
  CFItems: v.array(item),
  CFAssociations: v.nullish(
    v.array(
      v.object({
        associationType: v.string(),
        sequenceNumber: v.nullish(v.number()),
        originNodeURI: node,
        destinationNodeURI: node,
      }),
    ),
  ),
})
type Item = v.InferOutput<typeof item>
type Package = v.InferOutput<typeof packageSchema>

/** Never throws. */
export function caseTree(source: string): DraftRead {
  let json: unknown
  try {
    json = JSON.parse(source.replace(/^\ufeff/, ''))
  } catch (error) {
    return {
      ok: false,
      fault: `This is not complete JSON${whereIn(source, error)}: it may have been cut short.`,
    }
  }
  const read = v.safeParse(packageSchema, json)
  if (!read.success) {
    const [issue] = read.issues
    const where = v.getDotPath(issue)
    return {
      ok: false,
      fault: `This is not a package of the CASE standard: ${where ? `at ${where}: ` : ''}${issue.message.slice(0, 200)}. It should have CFDocument, CFItems with fullStatement, and CFAssociations.`,
    }
  }
  return draftOf(read.output)
}

function whereIn(source: string, error: unknown): string {
  const at = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1]
  return at === undefined ? '' : ` (line ${source.slice(0, Number(at)).split('\n').length})`
}

interface Child {
  readonly item: Item
  readonly place: Place
  readonly children: Child[]
}

function draftOf({ CFDocument, CFItems, CFAssociations }: Package): DraftRead {
  const warnings: DraftWarning[] = []
  const nodes = new Map<string, Child>()
  CFItems.forEach((one, i) => {
    const place: Place = { kind: 'item', number: i + 1 }
    if (nodes.has(one.identifier))
      warnings.push({
        message: 'An item before it has the same identifier: this one was left out.',
        place,
      })
    else nodes.set(one.identifier, { item: one, place, children: [] })
  })
  const roots: Child[] = []
  const parents = parentsOf(CFAssociations ?? [], nodes, CFDocument.identifier, warnings)
  for (const [id, child] of nodes) {
    const parent = parents.get(id)
    if (parent === CFDocument.identifier) roots.push(child)
    else if (parent !== undefined) nodes.get(parent)!.children.push(child)
  }
  const order = new Map([...parents.keys()].map((id, i) => [id, i]))
  const inOrder = (children: Child[]) =>
    children.sort(
      (a, b) => (order.get(a.item.identifier) ?? 0) - (order.get(b.item.identifier) ?? 0),
    )
  const lines: Omit<DraftLine, 'key'>[] = []
  const seen = new Set<Child>()
  walk(inOrder(roots), 1)
  const lost = [...nodes.values()].filter((child) => !seen.has(child))
  if (lost.length > 0) {
    const cycles = lost.filter(({ item: { identifier } }) => parents.has(identifier)).length
    warnings.push({
      message: `${lost.length} items hang on nothing${cycles > 0 ? ', or on one another in a circle' : ''}: they stand at the end, under “Not placed”.`,
      place: lost[0]!.place,
    })
    lines.push({ role: 'topic', ref: '', text: 'Not placed', depth: 1 })
    for (const child of lost) lines.push(pointLine(child))
  }
  return treeFrom(
    lines.map((line, key) => ({ ...line, key })),
    CFDocument.title,
    warnings.slice(0, 100),
    CFDocument.notes ?? CFDocument.description ?? undefined,
  )

  // Without recursion: a package may be nested deeper than the stack.
  function walk(start: readonly Child[], depth: number): void {
    const stack = [...start].reverse().map((child) => ({ child, depth }))
    if (start.some(({ children }) => children.length === 0) && start.length > 0)
      lines.push({ role: 'topic', ref: '', text: CFDocument.title, depth: 1 })
    while (stack.length > 0) {
      const { child, depth: at } = stack.pop()!
      seen.add(child)
      if (child.children.length === 0) {
        lines.push(pointLine(child))
        continue
      }
      const own = child.children.some(({ children }) => children.length === 0)
      lines.push(topicLine(child, at, own))
      // Points first: what follows a deeper topic would belong to that one.
      const children = inOrder(child.children)
      const leaves = children.filter((one) => one.children.length === 0)
      const deeper = children.filter((one) => one.children.length > 0)
      for (const next of [...leaves, ...deeper].reverse())
        stack.push({ child: next, depth: at + 1 })
    }
  }

  function pointLine({ item: one, place }: Child): Omit<DraftLine, 'key'> {
    const read = readPointFields({ ...known(one.extensions), ideas: one.conceptKeywords })
    if (!read.ok)
      warnings.push({ message: `What else it has was not taken. ${read.message}`, place })
    return {
      role: 'point',
      ref: one.humanCodingScheme ?? '',
      text: one.fullStatement,
      place,
      ...(read.ok && read.more ? { more: read.more } : {}),
    }
  }
}

const FIELDS = ['cue', 'any', 'reject', 'equation', 'where', 'value', 'steps']
const known = (extensions: Item['extensions']): Record<string, unknown> =>
  Object.fromEntries(Object.entries(extensions ?? {}).filter(([name]) => FIELDS.includes(name)))

function topicLine(
  { item: one, place }: Child,
  depth: number,
  own: boolean,
): Omit<DraftLine, 'key'> {
  const caution = one.extensions?.['caution']
  const short = one.abbreviatedStatement?.trim()
  return {
    role: own ? 'topic' : 'out',
    ref: one.humanCodingScheme ?? '',
    text: (short && one.fullStatement.length > 120 ? short : one.fullStatement)
      .replace(/\s+/g, ' ')
      .slice(0, 150),
    depth,
    place,
    ...(own ? {} : { why: 'A heading with no points of its own' }),
    ...(typeof caution === 'string' ? { caution } : {}),
  }
}

/** The parent of each item, in the order of the sequence numbers; where there are several, the first. */
function parentsOf(
  associations: NonNullable<Package['CFAssociations']>,
  nodes: ReadonlyMap<string, Child>,
  root: string,
  warnings: DraftWarning[],
): Map<string, string> {
  const parents = new Map<string, string>()
  const sorted = associations
    .filter(({ associationType }) => associationType === 'isChildOf')
    .map((one, i) => ({ one, i, place: one.sequenceNumber ?? Infinity }))
    .sort((a, b) => (a.place === b.place ? a.i - b.i : a.place - b.place))
  for (const { one } of sorted) {
    const child = one.originNodeURI.identifier
    const parent = one.destinationNodeURI.identifier
    const here = nodes.get(child)
    if (!here || (parent !== root && !nodes.has(parent))) continue
    const before = parents.get(child)
    if (before === undefined) parents.set(child, parent)
    else if (before !== parent)
      warnings.push({
        message: 'This item has more than one parent: it stands under the first.',
        place: here.place,
      })
  }
  return parents
}
