/**
 * npx tsx src/cli/lexicon/build-stems.ts
 * Writes src/lib/marking/lexicon/stems.ts: the Porter stems of the lexicon's own words, which every worker needs when it starts; the stemmer
 * takes longer for them than a page takes to be marked. A word that is missing there is stemmed when it is asked for: to be run again after
 * the lexicon has grown by much.
 */
import { writeFileSync } from 'node:fs'
import stemmer from 'natural/lib/natural/stemmers/porter_stemmer.js'
import { lexiconWords } from '../../lib/marking'
import { frontCoded } from './front-coding'

const words = lexiconWords()
  .filter((word) => word.length > 2)
  .sort()

// What is left of the word is told by how many letters go; what comes in their place follows.
function endingOf(word: string): string {
  const stem = stemmer.stem(word)
  let kept = 0
  while (kept < stem.length && stem[kept] === word[kept]) kept += 1
  return kept === word.length ? '' : `${word.length - kept}${stem.slice(kept)}`
}

writeFileSync(
  'src/lib/marking/lexicon/stems.ts',
  `/**
 * ${words.length} words of the lexicon, front-coded as in \`known-words.ts\`, each with how its Porter stem is made: how many letters go, and what
 * comes instead. Made by src/cli/lexicon/build-stems.ts with natural; not edited by hand.
 */
export const stems =
  '${frontCoded(words, endingOf)}'
`,
)
console.log(`${words.length} words`)
