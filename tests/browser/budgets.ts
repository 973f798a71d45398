/**
 * What the app may fetch, in kB as sent with gzip (1 kB is 1,000 bytes): `npm test` counts it in a browser and fails above.
 * A budget is raised only with its reason. At 1.6 Mbit/s, a slow mobile line, 100 kB take half a second.
 */
export interface Budget {
  readonly what: string
  readonly kB: number
  /** Why its large pieces have to be there. */
  readonly why: string
}

const SHORE = 'syllabus=shoreline-science-level-2'
const DRIFT = `${SHORE}&topic=longshore-drift`

/** On every page: Svelte 21, SvelteKit's client 14, valibot and idb-keyval 3, the records and their schemas 8, the page with its styles 4. */
const FRAME = 'the frame'
/** The polyfill of Temporal, 19: days and time zones, which browsers do not all have yet. */
const DAYS = 'days'
/** The points of the syllabus that is open, 19. */
const POINTS = 'points'

/** By address: the page, its scripts and styles, and what they fetch by themselves. */
export const FIRST_LOADS: readonly Budget[] = [
  { what: '/', kB: 106, why: `${FRAME}, ${DAYS}` },
  { what: `/check?${DRIFT}`, kB: 116, why: `${FRAME}, ${DAYS}, ${POINTS}` },
  { what: '/marked', kB: 108, why: `${FRAME}, ${DAYS}` },
  { what: `/topic?${DRIFT}`, kB: 106, why: `${FRAME}, ${DAYS}` },
  { what: `/syllabus?${SHORE}`, kB: 96, why: `${FRAME}, ${DAYS}` },
  { what: '/syllabi', kB: 102, why: `${FRAME}, ${DAYS}` },
  { what: '/bring', kB: 81, why: FRAME },
  {
    what: `/edit?${SHORE}`,
    kB: 187,
    why: `${FRAME}, ${DAYS}, ${POINTS}, their file as its author wrote it 11, the YAML parser that keeps its comments 36`,
  },
  { what: '/plan', kB: 96, why: `${FRAME}, ${DAYS}` },
  { what: '/tonight', kB: 136, why: `${FRAME}, ${DAYS}, ${POINTS}` },
  { what: `/drill?${DRIFT}`, kB: 131, why: `${FRAME}, ${DAYS}, ${POINTS}` },
  { what: `/sheet?${DRIFT}`, kB: 122, why: `${FRAME}, ${DAYS}, ${POINTS}` },
  { what: '/papers', kB: 97, why: `${FRAME}, ${DAYS}` },
  { what: '/settings', kB: 90, why: `${FRAME}, ${DAYS}` },
  { what: '/data', kB: 112, why: `${FRAME}, ${DAYS}` },
  { what: '/help', kB: 74, why: `${FRAME}, its own words 9` },
  { what: '/group', kB: 108, why: `${FRAME}, ${DAYS}, agreement and reports 6` },
  { what: '/pupil', kB: 110, why: `${FRAME}, ${DAYS}, agreement and reports 6` },
  { what: '/moderate', kB: 107, why: `${FRAME}, ${DAYS}, agreement and reports 6` },
]

/**
 * The page that is written on, before the first word can be typed: its document, with its styles in it, and nothing else; and before that
 * word is kept: what the document says to fetch at once.
 */
export const FIRST_WORD = { document: 6, fetchedAtOnce: 65 }

/** Fetched when it is asked for, by the name of their file in the built folder. */
export const PIECES: readonly (Budget & { readonly file: RegExp })[] = [
  {
    what: 'the worker that marks',
    file: /\/workers\/marking\.worker/,
    kB: 295,
    why: 'the word lists 215, compromise 32, natural 16',
  },
  {
    what: 'the worker that reads what is brought',
    file: /\/workers\/import\.worker/,
    kB: 60,
    why: 'the YAML parser 36, papaparse 7',
  },
  {
    what: 'the worker of pdf.js',
    file: /\/workers\/pdf\.worker/,
    kB: 365,
    why: 'fonts, encodings and pictures of every kind of PDF',
  },
  {
    what: 'all that one visit keeps for use with the network off',
    file: /./,
    kB: 2000,
    why: 'the pieces above, once more for browsers that start no worker, and every page',
  },
]

/**
 * Libraries that no first load may hold, each with words of its own that stand in its built file, and the pages that have to have
 * it. Import adds nothing to the other pages.
 */
export const HEAVY: readonly {
  readonly library: string
  readonly words: string
  readonly except?: string
}[] = [
  { library: 'pdfjs-dist', words: 'PasswordException' },
  { library: 'mammoth', words: 'w:tbl' },
  { library: 'papaparse', words: 'skipEmptyLines' },
  { library: 'compromise', words: 'killUnicode' },
  { library: 'yaml', words: 'Implicit map keys', except: '/edit' },
]
