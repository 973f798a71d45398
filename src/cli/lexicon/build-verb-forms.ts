/**
 * npx tsx src/cli/lexicon/build-verb-forms.ts
 * Writes src/lib/marking/lexicon/verb-forms.ts: the words that compromise's lexicon knows as forms of verbs. Its lexicon takes longer to
 * set up than a page takes to be marked, and the marker asks nothing else of it.
 */
import { writeFileSync } from 'node:fs'
import nlp from 'compromise/two'
import { frontCoded } from './front-coding'

const model = nlp.model() as {
  one: { lexicon: Readonly<Record<string, string | readonly string[]>> }
  two: { switches: Readonly<Record<string, string>> }
}
const { lexicon } = model.one
const VERB = /^(?:Copula|Modal|Auxiliary|PastTense|PresentTense|Gerund|Infinitive|Participle)$/

const tagged = (word: string, tags: RegExp): boolean =>
  [lexicon[word] ?? []].flat().some((tag) => tags.test(tag))
const words = Object.keys(lexicon).filter((word) => /^[a-z']+$/.test(word))

// Forms that the lexicon does not list are those that nobody should write: coachs.
const infinitive = (word: string) => tagged(word, /^Infinitive$/)
const ofUnlisted = (form: string): boolean => {
  const base = /^(.{3,}?)(?:es|s)$/.exec(form)?.[1]
  return base !== undefined && (infinitive(base) || infinitive(`${base}e`))
}
const unlisted = words
  .filter(infinitive)
  .flatMap((word) => [word, word.replace(/e$/, '')].flatMap((base) => [`${base}s`, `${base}es`]))
  .filter((form) => !Object.hasOwn(lexicon, form) && ofUnlisted(form))

const verbs = [...new Set([...words.filter((word) => tagged(word, VERB)), ...unlisted])].sort()
const either = Object.entries(model.two.switches)
  .filter(([, tag]) => tag.includes('Verb'))
  .map(([word]) => word)
  .sort()

writeFileSync(
  'src/lib/marking/lexicon/verb-forms.ts',
  `/**
 * Forms of verbs, front-coded as in \`known-words.ts\`: ${verbs.length} that are nothing else, and ${either.length} that are nouns or verbs by their place.
 * Made by src/cli/lexicon/build-verb-forms.ts from the lexicon of compromise; not edited by hand.
 */
export const verbForms =
  ${JSON.stringify(frontCoded(verbs))}
export const nounsOrVerbs =
  '${frontCoded(either)}'
`,
)
console.log(`${verbs.length} and ${either.length} words`)
