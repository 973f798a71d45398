/** Where each record is kept. The part before the first slash is its kind. */
import type { RecordOf } from './records'
import type { LearnedWording } from './types'

export const KINDS = [
  'check',
  'page',
  'draft',
  'syllabus',
  'paper',
  'settings',
  'edit',
  'entry',
  'round',
  'learned',
  // Who saves files here, and what came back from a tutor.
  'sender',
  'remarks',
  // The tutor's side: what came from pupils, then the tutor's own. None of it is under the keys above.
  'pupil',
  'pupil-checks',
  'pupil-file',
  'review',
  'tutor-notes',
  'import',
] as const
export type Kind = (typeof KINDS)[number]

const ASIDE = 'aside/'

export const checkKey = (id: string): string => `check/${id}`
export const pageKey = (id: string): string => `page/${id}`
export const syllabusKey = (id: string): string => `syllabus/${id}`
export const paperKey = (id: string): string => `paper/${id}`
export const roundKey = (id: string): string => `round/${encodeURIComponent(id)}`
export const entryKey = (id: string): string => `entry/${id}`
/** What says which mark a wording was learnt from. */
export type LearnedAt = Pick<
  LearnedWording,
  'syllabusId' | 'topicId' | 'ref' | 'checkId' | 'by' | 'pupilId'
>
/** Of one point, from one check and who changed it: a slash in an id must not reach another point's. */
export const learnedKey = (at: LearnedAt): string =>
  [
    learnedPrefix(at) + encodeURIComponent(at.ref),
    encodeURIComponent(at.checkId),
    ...(at.by === 'tutor' ? ['tutor'] : []),
    ...(at.pupilId === undefined ? [] : [encodeURIComponent(at.pupilId)]),
  ].join('/')
const learnedPrefix = (at: { readonly syllabusId: string; readonly topicId: string }) =>
  `learned/${encodeURIComponent(at.syllabusId)}/${encodeURIComponent(at.topicId)}/`
export const editKey = (syllabusId: string): string => `edit/${syllabusId}`
/** One draft at a time is put right. */
export const IMPORT_KEY = 'import/draft'
export const SETTINGS_KEY = 'settings'
export const SENDER_KEY = 'sender'

// Kept beside the records: no records themselves, and in no backup.
const MADE = 'made/'
export const REVISION_KEY = `${MADE}revision`
export const DIGEST_KEY = `${MADE}checks`
/** What the last restore changed, for as long as it can be undone. */
export const UNDO_KEY = `${MADE}restore`
export const isMade = (key: string): boolean =>
  key === REVISION_KEY || key === DIGEST_KEY || key === UNDO_KEY

export const remarksKey = (checkId: string): string => `remarks/${checkId}`

// Ids in a pupil's file come from outside: a slash in one must not reach another pupil's records.
export const pupilKey = (id: string): string => `pupil/${encodeURIComponent(id)}`
export const pupilChecksKey = (id: string): string => `pupil-checks/${encodeURIComponent(id)}`
export const tutorNotesKey = (id: string): string => `tutor-notes/${encodeURIComponent(id)}`
export const pupilFileKey = (id: string): string => `pupil-file/${encodeURIComponent(id)}`
export const reviewPrefix = (id: string): string => `review/${encodeURIComponent(id)}/`
export const reviewKey = (id: string, checkId: string): string =>
  reviewPrefix(id) + encodeURIComponent(checkId)

/** Both ids are escaped: a slash in one must not make two drafts share a key. */
export const draftKey = (syllabusId: string, topicId: string): string =>
  `draft/${encodeURIComponent(syllabusId)}/${encodeURIComponent(topicId)}`

/** Where a record of each kind stands. */
export const KEY_OF: { readonly [K in Kind]: (record: RecordOf[K]) => string } = {
  check: ({ id }) => checkKey(id),
  page: ({ id }) => pageKey(id),
  draft: ({ syllabusId, topicId }) => draftKey(syllabusId, topicId),
  syllabus: ({ id }) => syllabusKey(id),
  paper: ({ id }) => paperKey(id),
  settings: () => SETTINGS_KEY,
  edit: ({ id }) => editKey(id),
  entry: ({ id }) => entryKey(id),
  round: ({ id }) => roundKey(id),
  learned: learnedKey,
  sender: () => SENDER_KEY,
  remarks: ({ id }) => remarksKey(id),
  pupil: ({ id }) => pupilKey(id),
  'pupil-checks': ({ id }) => pupilChecksKey(id),
  'pupil-file': ({ id }) => pupilFileKey(id),
  review: ({ pupilId, checkId }) => reviewKey(pupilId, checkId),
  'tutor-notes': ({ pupilId }) => tutorNotesKey(pupilId),
  import: () => IMPORT_KEY,
}

/** The keys that begin with `prefix`, which ends in a slash: "0" is the character after "/". */
const under = (prefix: string): IDBKeyRange =>
  IDBKeyRange.bound(prefix, `${prefix.slice(0, -1)}0`, false, true)

export const keysOf = (kind: Exclude<Kind, 'settings' | 'sender'>): IDBKeyRange => under(`${kind}/`)

/** Those of one topic. */
export const keysOfLearned = (at: {
  readonly syllabusId: string
  readonly topicId: string
}): IDBKeyRange => under(learnedPrefix(at))

/** Those of one pupil. */
export const keysOfReviews = (id: string): IDBKeyRange => under(reviewPrefix(id))

/** Where copies are put of what stood at a key and would have been overwritten: `aside/<key>/<number>`. */
export const asidePrefix = (key: string): string => `${ASIDE}${key}/`
export const asideKeysOf = (key: string): IDBKeyRange => under(asidePrefix(key))
/** Among them, what another window wrote of the same draft. */
export const besideKey = (key: string, window: string): string =>
  `${asidePrefix(key)}window-${window}`
export const isBeside = (key: string): boolean => isAside(key) && /\/window-[^/]*$/.test(key)
export const isAside = (key: string): boolean => key.startsWith(ASIDE)

/** The key at which a record stood before it was set aside; any other key as it is. */
export const keptAt = (key: string): string =>
  isAside(key) ? key.slice(ASIDE.length, key.lastIndexOf('/')) : key

/** The kind of record at a key, set aside or not; `undefined` for a key that is none of ours. */
export const kindAt = (key: string): Kind | undefined =>
  KINDS.find((kind) => kind === keptAt(key).split('/')[0])
