import nlp from 'compromise/two'

const model = nlp.model() as {
  one: { lexicon: Readonly<Record<string, string | readonly string[]>> }
  two: { switches: Readonly<Record<string, string>> }
}
const { lexicon } = model.one
const { switches } = model.two

const VERB = /^(?:Copula|Modal|Auxiliary|PastTense|PresentTense|Gerund|Infinitive|Participle)$/

const own = <T>(table: Readonly<Record<string, T>>, word: string): T | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined

function tagged(word: string, tags: RegExp): boolean {
  const tag = own(lexicon, word)
  return (typeof tag === 'string' ? [tag] : (tag ?? [])).some((t) => tags.test(t))
}

/** Is the word a form of a verb, and only that, by compromise's lexicon? */
export function isVerb(word: string): boolean {
  if (/n't$/.test(word)) return true
  if (tagged(word, VERB)) return true
  // Its lexicon does not list every form of every verb: erodes, from erode.
  const base = /^(.{3,}?)(?:es|s)$/.exec(word)?.[1]
  return (
    base !== undefined &&
    own(lexicon, word) === undefined &&
    (tagged(base, /^Infinitive$/) || tagged(`${base}e`, /^Infinitive$/))
  )
}

/** Words that are a noun or a verb by their place: pushes, runs, moves. */
export function maybeVerb(word: string): boolean {
  return /Verb/.test(own(switches, word) ?? '')
}
