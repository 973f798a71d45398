// Where each room of src/lib may look: imports point one way, and a room is entered by its index.
//   routes -> components -> view | store -> review -> recall -> marking -> syllabus

const ROOMS = ['syllabus', 'marking', 'recall', 'review', 'view', 'store', 'components']
const WITH_A_DOOR = 'syllabus|marking|recall|review|store'
const PURE = ['syllabus', 'marking', 'recall', 'review', 'view']

/** @type {Readonly<Record<string, readonly string[]>>} */
const MAY_IMPORT = {
  syllabus: [],
  marking: ['syllabus'],
  recall: ['marking', 'syllabus'],
  review: ['recall', 'marking', 'syllabus'],
  view: ['review', 'recall', 'marking', 'syllabus'],
  store: ['review', 'recall', 'marking', 'syllabus'],
  components: ['view', 'store', 'review', 'recall', 'marking', 'syllabus'],
}

/** The start of an import that leaves the room it stands in. */
const OUT = String.raw`^(?:\$lib/|(?:\.\./)+(?:src/)?(?:lib/)?)`

/** @param {readonly string[]} rooms */
const into = (rooms) => `${OUT}(?:${rooms.join('|')})(?:/|$)`

/** Every module of a room but its index and its types; `also` names further ones, as a regular expression. */
const pastTheDoor = (also = '') =>
  `${OUT}(?:${WITH_A_DOOR})/(?!(?:index|types)(?:\\.ts)?$)(?!(?<=syllabus/)import(?:/index)?$)${also}`

const OUTSIDE_WORLD = String.raw`^(?:node:|(?:svelte|\$app|\$env|fs|path|idb-keyval|comlink)(?:/|$))`
const ROUTES = String.raw`^(?:\.\./)+(?:src/)?routes(?:/|$)`

/**
 * @param {readonly { regex: string, message: string, allowTypeImports?: boolean }[]} patterns
 * @returns {Record<string, unknown>}
 */
const imports = (patterns) => ({
  '@typescript-eslint/no-restricted-imports': ['error', { patterns }],
})

const door = (also = '') => ({
  regex: pastTheDoor(also),
  message: 'A room is entered by its index (types may come from its types.ts).',
})

/** @param {string} room */
function patternsOf(room) {
  const closed = ROOMS.filter((other) => other !== room && !MAY_IMPORT[room]?.includes(other))
  return [
    {
      regex: into(closed),
      message: `The room ${room} may import ${MAY_IMPORT[room]?.join(', ') || 'no other room'}.`,
    },
    { regex: ROUTES, message: 'Pages import the rooms, never the other way round.' },
    // The door of the syllabus room would bring the YAML parser into the marking worker.
    door(room === 'marking' ? String.raw`(?!(?:(?<=syllabus/)(?:notation|value))$)` : ''),
    ...(PURE.includes(room)
      ? [
          {
            regex: OUTSIDE_WORLD,
            message: 'A pure room runs in Node, in a worker and in the page, unchanged.',
          },
        ]
      : []),
    ...(room === 'recall'
      ? [
          {
            regex: into(['marking', 'syllabus']),
            message: 'Recall counts outcomes; it does not mark. Types only.',
            allowTypeImports: true,
          },
        ]
      : []),
  ]
}

const NO_CLOCK = 'Same in, same out: the clock is a parameter.'
const NO_LOCALE =
  'Same in, same out: name the locale, the result must not depend on that of the machine.'
const SAME_OUT = [
  { selector: "MemberExpression[object.name='Date'][property.name='now']", message: NO_CLOCK },
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: NO_CLOCK },
  { selector: "CallExpression[callee.name='Date']", message: NO_CLOCK },
  { selector: "MemberExpression[object.name='Temporal'][property.name='Now']", message: NO_CLOCK },
  { selector: "MemberExpression[object.name='performance']", message: NO_CLOCK },
  {
    selector: "MemberExpression[object.name='Math'][property.name='random']",
    message: 'Same in, same out: chance is a parameter.',
  },
  {
    selector: 'CallExpression[callee.property.name=/^toLocale/]:not([arguments.0.type="Literal"])',
    message: NO_LOCALE,
  },
  {
    selector: "CallExpression[callee.property.name='localeCompare'][arguments.length=1]",
    message: NO_LOCALE,
  },
]

export const borders = [
  ...ROOMS.map((room) => ({ files: [`src/lib/${room}/**`], rules: imports(patternsOf(room)) })),
  {
    files: ['src/routes/**', 'src/cli/**'],
    rules: imports([door()]),
  },
  {
    files: ['src/workers/**'],
    rules: imports([
      { regex: into(['store', 'components']), message: 'A worker runs pure code only.' },
      door(),
    ]),
  },
  {
    files: PURE.map((room) => `src/lib/${room}/**`),
    rules: { 'no-restricted-syntax': ['error', ...SAME_OUT] },
  },
]
