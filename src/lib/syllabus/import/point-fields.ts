/** Further fields of a point, as another file has them -> a point, through the reader of syllabus files. */
import { stringify } from 'yaml'
import { readSyllabus } from '../read'
import type { Point } from '../types'

/** In the place of the point's own text, which a cue may not repeat. */
const STANDS_ELSEWHERE = 'The text of the point stands elsewhere.'

export type FieldsRead =
  | { readonly ok: true; readonly more?: Omit<Point, 'ref' | 'text'> }
  | { readonly ok: false; readonly message: string }

/** `fields` by the names of a syllabus file; empty ones are left out. Never throws. */
export function readPointFields(fields: Readonly<Record<string, unknown>>): FieldsRead {
  const given = Object.entries(fields).filter(([, value]) => !isEmpty(value))
  if (given.length === 0) return { ok: true }
  const source = stringify(
    {
      format: 1,
      title: 'x',
      topics: [
        {
          title: 'x',
          points: [{ ref: 'x', text: STANDS_ELSEWHERE, ...Object.fromEntries(given) }],
        },
      ],
    },
    { lineWidth: 0, aliasDuplicateObjects: false },
  )
  const read = readSyllabus(source)
  if (!read.ok) {
    const { where, message } = read.mistakes[0]!
    return { ok: false, message: `${where.replace(/^.*point x,?\s*/, '')}: ${message}` }
  }
  const { ref: _ref, text: _text, ...more } = read.syllabus.topics[0]!.points[0]!
  return { ok: true, more }
}

const isEmpty = (value: unknown): boolean =>
  value === undefined ||
  value === null ||
  value === '' ||
  (Array.isArray(value) && value.length === 0)
