/** What the columns of a table hold: by the names above them, else by what stands in them. */
import { isRef } from './marks'

export const COLUMN_USES = ['topic', 'ref', 'text', 'ideas'] as const
/** 'out': the column is not taken. Others are further fields of a point, by the names of a syllabus file. */
export type ColumnUse = (typeof COLUMN_USES)[number] | 'out' | Further
export const FURTHER = [
  'any',
  'cue',
  'reject',
  'equation',
  'where',
  'value',
  'steps',
  'caution',
] as const
export type Further = (typeof FURTHER)[number]

const NAMES: readonly (readonly [ColumnUse, RegExp])[] = [
  [
    'ref',
    /^(?:ref(?:erence)?|code|no|number|nr|#|id|point (?:no|number|ref)|spec(?:ification)? (?:ref(?:erence)?|point|no))\.?$/,
  ],
  ['topic', /^(?:topic|unit|section|chapter|theme|module|area|sub-?topic|topic title)s?$/],
  [
    'text',
    /^(?:text|points?|statement|full statement|content|(?:specification|subject|learning) (?:content|point|statement|outcome|objective)s?|description|(?:learning )?(?:outcome|objective)s?|what (?:to|you|students?|must|should)\b.*|(?:students?|candidates?|learners?|pupils?|you) (?:should|must|will|need)\b.*|meaning|definition)$/,
  ],
  ['ideas', /^(?:(?:key )?ideas?|mark scheme|marking points?|key ?words?|answers?|accept)$/],
]

/** undefined where no name is known: then the first row is no header. */
export function usesByName(header: readonly string[]): ColumnUse[] | undefined {
  const taken = new Set<ColumnUse>()
  const uses = header.map((cell): ColumnUse => {
    const name = cell.trim().toLowerCase().replace(/\s+/g, ' ').replace(/:$/, '')
    const further = FURTHER.find((field) => field === name)
    const use = further ?? NAMES.find(([, names]) => names.test(name))?.[0] ?? 'out'
    if (use === 'out' || taken.has(use)) return 'out'
    taken.add(use)
    return use
  })
  return taken.has('text') || (taken.has('ref') && taken.size > 1) ? withText(uses) : undefined
}

// A header that names the numbers but not the points: the first other column holds them.
function withText(uses: ColumnUse[]): ColumnUse[] {
  if (uses.includes('text')) return uses
  const at = uses.indexOf('out')
  return at === -1 ? uses : uses.map((use, i) => (i === at ? 'text' : use))
}

/** By what stands in the rows: refs look like refs, and the points are the longest texts. */
export function usesByContent(rows: readonly (readonly string[])[]): ColumnUse[] {
  const width = rows.slice(0, 200).reduce((most, row) => Math.max(most, row.length), 0)
  const columns = Array.from({ length: Math.min(width, 50) }, (_, c) =>
    rows.slice(0, 200).map((row) => (row[c] ?? '').trim()),
  )
  const filled = columns.map((cells) => cells.filter((cell) => cell !== ''))
  const ref = filled.findIndex(
    (cells) => cells.length > 0 && cells.filter(isRef).length >= cells.length * 0.7,
  )
  const length = (cells: readonly string[]) => cells.reduce((sum, cell) => sum + cell.length, 0)
  let text = -1
  filled.forEach((cells, c) => {
    if (c !== ref && (text === -1 || length(cells) > length(filled[text]!))) text = c
  })
  const topic = filled.findIndex(
    (cells, c) => c !== ref && c < text && cells.length > 1 && new Set(cells).size < cells.length,
  )
  return columns.map((_, c) =>
    c === ref ? 'ref' : c === text ? 'text' : c === topic ? 'topic' : 'out',
  )
}
