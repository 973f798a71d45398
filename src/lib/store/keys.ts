/** Where each record is kept. The part before the first slash is its kind. */

export const KINDS = [
  'check',
  'page',
  'draft',
  'syllabus',
  'paper',
  'settings',
  'edit',
  'entry',
] as const
export type Kind = (typeof KINDS)[number]

const ASIDE = 'aside/'

export const checkKey = (id: string): string => `check/${id}`
export const pageKey = (id: string): string => `page/${id}`
export const syllabusKey = (id: string): string => `syllabus/${id}`
export const paperKey = (id: string): string => `paper/${id}`
export const entryKey = (id: string): string => `entry/${id}`
export const editKey = (syllabusId: string): string => `edit/${syllabusId}`
export const SETTINGS_KEY = 'settings'

/** Both ids are escaped: a slash in one must not make two drafts share a key. */
export const draftKey = (syllabusId: string, topicId: string): string =>
  `draft/${encodeURIComponent(syllabusId)}/${encodeURIComponent(topicId)}`

/** The keys that begin with `prefix`, which ends in a slash: "0" is the character after "/". */
const under = (prefix: string): IDBKeyRange =>
  IDBKeyRange.bound(prefix, `${prefix.slice(0, -1)}0`, false, true)

export const keysOf = (kind: Exclude<Kind, 'settings'>): IDBKeyRange => under(`${kind}/`)

/** Where copies are put of what stood at a key and would have been overwritten: `aside/<key>/<number>`. */
export const asidePrefix = (key: string): string => `${ASIDE}${key}/`
export const asideKeysOf = (key: string): IDBKeyRange => under(asidePrefix(key))
export const isAside = (key: string): boolean => key.startsWith(ASIDE)

/** The key at which a record stood before it was set aside; any other key as it is. */
export const keptAt = (key: string): string =>
  isAside(key) ? key.slice(ASIDE.length, key.lastIndexOf('/')) : key

/** The kind of record at a key, set aside or not; `undefined` for a key that is none of ours. */
export const kindAt = (key: string): Kind | undefined =>
  KINDS.find((kind) => kind === keptAt(key).split('/')[0])
