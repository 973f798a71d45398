/** The text of a file from somebody else -> what it holds, or one clear sentence why it is refused. */
import * as v from 'valibot'
import type { Report } from '../marking/types'
import type { RecallFile, ReturnFile, SharedPage } from '../review'
import { StoreError } from './errors'
import { fitsReport } from './schemas/fits-report'
import { recallFileSchema, returnFileSchema, sharedPageSchema } from './schemas/review'

const refusal = (what: string): StoreError =>
  new StoreError('unreadable', `${what} Nothing on this device was changed.`)

interface Kind {
  readonly field: 'recallFile' | 'returnFile'
  /** What it is called, and where it is made. */
  readonly name: string
  readonly from: string
}

const RECALL: Kind = {
  field: 'recallFile',
  name: 'recall file',
  from: 'the file that a pupil saved under “Your data”',
}
const RETURN: Kind = {
  field: 'returnFile',
  name: 'file from a tutor',
  from: 'the file that your tutor saved for you',
}

/** Takes what `recallFileSchema` takes; reports, which are nearly all of a file, in a fraction of the time. */
const quickSchema = v.object({
  ...recallFileSchema.entries,
  checks: v.array(
    v.object({
      ...recallFileSchema.entries.checks.item.entries,
      page: v.optional(v.object({ text: v.string(), report: v.custom<Report>(fitsReport) })),
    }),
  ),
})

/** Throws a StoreError for anything but a whole recall file that this version can read. */
export function readRecallFile(text: string): RecallFile {
  const file = readFile(RECALL, quickSchema, text)
  const ids = new Set<string>()
  file.checks.forEach(({ check, topic, page }, i) => {
    const where = `checks.${i}`
    const damaged = (what: string) => damage(RECALL, where, what)
    const own = file.topics[topic]
    if (own?.id !== check.topicId) throw damaged('its topic is not in the file')
    if (ids.has(check.id)) throw damaged('the same check is in it twice')
    ids.add(check.id)
    if (new Set(check.marks.map(({ ref }) => ref)).size < check.marks.length)
      throw damaged('a point is marked twice')
    if (page && page.report.points.some(({ ref }, n) => ref !== check.marks[n]?.ref))
      throw damaged('its page is of another check')
  })
  return file
}

/** The pages of some checks in the text of a recall file, by check; one that cannot be read is left out. */
export function pagesOf(text: string, checkIds: readonly string[]): Map<string, SharedPage> {
  const { checks } = JSON.parse(text) as { checks: { check: { id: string }; page?: unknown }[] }
  const wanted = new Set(checkIds)
  const pages = checks.flatMap(({ check: { id }, page }) => {
    const read = wanted.has(id) ? v.safeParse(sharedPageSchema, page) : undefined
    return read?.success ? [[id, read.output] as const] : []
  })
  return new Map(pages)
}

/** Throws a StoreError for anything but a whole file from a tutor that this version can read. */
export const readReturnFile = (text: string): ReturnFile => readFile(RETURN, returnFileSchema, text)

function readFile<T>(kind: Kind, schema: v.GenericSchema<unknown, T>, text: string): T {
  const file = parse(kind, text)
  if (v.is(v.object({ app: v.literal('Second Ink') }), file)) {
    const version = (file as Record<string, unknown>)[kind.field]
    if (typeof version === 'number' && version > 1)
      throw refusal(
        `This ${kind.name} was made by a newer Second Ink. Load the newest version, then try again.`,
      )
    const other = [RECALL, RETURN].find(({ field }) => field !== kind.field && field in file)
    if (other) throw refusal(`This is a ${other.name}, not a ${kind.name}.`)
    if ('backup' in file)
      throw refusal(`This is a backup, not a ${kind.name}. Choose ${kind.from}.`)
  }
  const parsed = v.safeParse(schema, file)
  if (parsed.success) return parsed.output
  const where = v.getDotPath(parsed.issues[0])
  if (where && v.is(v.object({ app: v.literal('Second Ink') }), file))
    throw damage(kind, where, 'what stands there does not fit')
  throw refusal(`This is no ${kind.name} of Second Ink. Choose ${kind.from}.`)
}

const damage = ({ name }: Kind, where: string, what: string) =>
  refusal(
    `This ${name} is damaged, or it was edited by hand: at “${where.slice(0, 80)}” ${what}. Ask for it again.`,
  )

function parse({ name }: Kind, text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw refusal(
      `This is not a ${name}, or it was cut short on the way: it is not complete JSON. Ask for it again.`,
    )
  }
}
