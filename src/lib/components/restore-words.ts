/** What a restore would do, did, or took back, in words. */
import type { Fates, Kind, Restored, RestorePreview, Undone } from '$lib/store'
import { counted, listed, opening } from '$lib/view/words'

const KIND_WORDS: { readonly [K in Kind]: readonly [one: string, many: string] } = {
  check: ['check', 'checks'],
  page: ['marked page', 'marked pages'],
  draft: ['page begun and not marked', 'pages begun and not marked'],
  syllabus: ['syllabus', 'syllabi'],
  paper: ['exam question', 'exam questions'],
  settings: ['settings', 'settings'],
  edit: ['syllabus being edited', 'syllabi being edited'],
  entry: ['exam entry begun', 'exam entries begun'],
  round: ['drill', 'drills'],
  learned: ['wording that a point learnt', 'wordings that points learnt'],
  sender: ['name for the tutor', 'names for the tutor'],
  remarks: ['comment from a tutor', 'comments from a tutor'],
  pupil: ['pupil', 'pupils'],
  'pupil-checks': ['history of a pupil', 'histories of pupils'],
  'pupil-file': ['file of a pupil', 'files of pupils'],
  review: ['check that you marked as a tutor', 'checks that you marked as a tutor'],
  'tutor-notes': ['page of notes on a pupil', 'pages of notes on pupils'],
  import: ['draft of a syllabus', 'drafts of a syllabus'],
}

const SETTING_WORDS: Readonly<Record<string, string>> = {
  sessionsNeeded: 'full sessions needed',
  daysApart: 'days between the first and the last',
  secondsPerPoint: 'seconds for a point',
  exams: 'exam dates',
  ratings: 'how hard you find a topic',
  minutesADay: 'minutes a day',
  syllabusIds: 'which syllabi are in use',
  tutorMarksCount: 'whether a tutor’s marks count',
  learnsFromChanges: 'whether points learn from your marks',
  calendarId: 'what your calendar entries are known by',
}

const FATE_WORDS: { readonly [F in keyof Fates]: string } = {
  added: 'new',
  taken: 'newer in the file',
  joined: 'put together with what is here',
  stays: 'different, what is here stays',
  same: 'here already',
}

export interface KindRow {
  readonly kind: Kind
  /** "12 checks". */
  readonly what: string
  /** "10 new, 2 here already". */
  readonly fates: string
}

export const kindRows = ({ kinds }: RestorePreview): KindRow[] =>
  (Object.entries(kinds) as [Kind, Fates][]).map(([kind, fates]) => {
    const all = Object.values(fates).reduce((sum, count) => sum + count, 0)
    const [one, many] = KIND_WORDS[kind]
    const parts = (Object.entries(fates) as [keyof Fates, number][]).filter(([, n]) => n > 0)
    return {
      kind,
      what: kind === 'settings' ? opening(one) : counted(all, one, many),
      fates: parts
        .map(([fate, n]) => (all === 1 ? FATE_WORDS[fate] : `${n} ${FATE_WORDS[fate]}`))
        .join(', '),
    }
  })

/** "exam dates and minutes a day"; '' where none changes. */
export const settingsWords = ({ settings }: RestorePreview): string =>
  listed(settings.map((name) => SETTING_WORDS[name] ?? name))

export function restoredWords({ added, united, unchanged, setAside }: Restored): string {
  const parts = [
    `${counted(added, 'record')} added`,
    united > 0 && `${united} joined with what was here`,
    unchanged > 0 && `${unchanged} here already`,
    setAside > 0 && `${setAside} could not be read and are set aside`,
  ].filter((part) => part !== false)
  return `Restored: ${listed(parts)}. Nothing that was here was lost.`
}

export const undoneWords = ({ undone, stay }: Undone): string =>
  `Undone: ${counted(undone, 'record')} ${undone === 1 ? 'is' : 'are'} as before the restore.` +
  (stay > 0
    ? ` ${counted(stay, 'record')} that you changed or removed since ${stay === 1 ? 'stays' : 'stay'} as ${stay === 1 ? 'it is' : 'they are'}.`
    : '')
