/** What a drill asks a point with: its author's cue, else its own text with everything that is asked for left out. */
import type { Idea, Point, Topic } from '../syllabus/types'
import { counted, listed, opening } from './words'

const GAP = '…'
/** Words that are no answer by themselves. */
const SMALL = new Set(
  (
    'a an and are as at be because been but by can could each for from has have how in into is it its itself may more most must of ' +
    'on or out over so some such than that the their them then there these they this those to under until up was were what when where ' +
    'which while who will with without would name give state list describe'
  ).split(' '),
)

/** A question or a text with gaps, never a word of an idea that is needed, unless the topic's title has it. */
export function cueOf(point: Point, topic: Pick<Topic, 'title'>): string {
  return point.cue ?? draftedCue(point, topic)
}

function draftedCue(point: Point, { title }: Pick<Topic, 'title'>): string {
  const { equation, steps, any, value } = point
  const shown = new Set(wordsOf(title))
  if (equation?.kind === 'algebraic') {
    const quantities = Object.values(equation.where).map(([first]) =>
      (first?.words ?? []).map(({ text }) => text).join(' '),
    )
    return `Which equation relates ${listed(quantities.filter(Boolean)) || 'them'}?`
  }
  if (equation) return `${title}: which equation, in formulae, does point ${point.ref} ask for?`
  // What is done stands before the first comma, how after it.
  if (steps) {
    const what = gapped({ ...point, text: point.text.split(/[,:]/)[0]! }, shown)
    return `${title}: ${counted(steps.length, 'step')} in order.${tells(what) ? ` ${what}` : ''}`
  }
  if (any !== undefined) return asked(point, shown, `Name ${any} for point ${point.ref}.`)
  if (value) return asked(point, shown, `Which value has point ${point.ref}, with its unit?`)
  return asked(point, shown, `${title}: what does point ${point.ref} say?`)
}

/** Enough of a text with gaps is left to know what is asked. */
const tells = (text: string): boolean => wordsOf(text).some((word) => !SMALL.has(word))

/** The text with its gaps where enough of it is left to know what is asked; else the plain question. */
function asked(point: Point, shown: ReadonlySet<string>, question: string): string {
  const text = gapped(point, shown)
  return tells(text) ? text : `${question}${text.includes(' ') ? ` ${text}` : ''}`
}

function gapped(point: Point, shown: ReadonlySet<string>): string {
  const needed = neededWords(point)
  const hides = (word: string): boolean => {
    const lower = word.toLowerCase()
    if (/\d/.test(word)) return true
    // `up-drift` is no word of a title that has `drift`.
    if (
      wordsOf(lower).every(
        (part) => shown.has(part) || shown.has(`${part}s`) || shown.has(part.replace(/s$/, '')),
      )
    )
      return false
    if (needed === undefined) return !SMALL.has(lower)
    return [...needed].some((other) => alike(lower, other))
  }
  // Of a list the answers come after the colon.
  const whole = point.any === undefined ? point.text : point.text.split(':')[0]!
  const pieces =
    whole.match(/[\p{L}\p{N}][\p{L}\p{N}'’.-]*[\p{L}\p{N}]|[\p{L}\p{N}]|\s+|[^\s]/gu) ?? []
  const text = pieces
    .map((piece) =>
      /^[\p{L}\p{N}]/u.test(piece) && hides(piece)
        ? GAP
        : /^[^\p{L}\p{N}\s.,;:?]/u.test(piece)
          ? GAP
          : piece,
    )
    .join('')
    .replace(/…(?:[\s]*…)+/g, GAP)
    .trim()
  return opening(/[.?]$/.test(text) ? text : `${text}.`)
}

/** Every word of every wording; `undefined` where the ideas are drafted from the text, and so all of it is asked for. */
function neededWords({ ideas, steps, value }: Point): ReadonlySet<string> | undefined {
  const all = [...ideas, ...(steps ?? [])]
  if (all.length === 0) return undefined
  return new Set([...all.flatMap(wordsOfIdea), ...wordsOf(value?.unit ?? '')])
}

const wordsOfIdea = (idea: Idea): string[] =>
  idea.parts.flatMap(({ wordings }) =>
    wordings.flatMap(({ words }) => words.flatMap(({ text }) => wordsOf(text))),
  )

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []

/** One word in two forms, generously: a gap too many gives nothing away. */
function alike(a: string, b: string): boolean {
  if (a === b) return true
  const parts = wordsOf(a)
  if (parts.length > 1) return parts.some((part) => alike(part, b))
  const [short, long] = a.length < b.length ? [a, b] : [b, a]
  let same = 0
  while (same < short.length && short[same] === long[same]) same += 1
  return same >= 3 && same >= short.length - 2 && long.length - same <= 4
}
