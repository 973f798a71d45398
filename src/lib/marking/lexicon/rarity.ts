import { rarityClasses } from './word-rarity'

/** The class of a word that is in no class: hardly any definition has it. */
const RAREST = 10

const classes = new Map<string, number>()
for (const [rarity, keys] of rarityClasses)
  for (const key of keys.split(' ')) classes.set(key, rarity)

/** How much a word tells, by its key: 0.1 for the commonest to 1 for rare ones. */
export const rarityOf = (key: string): number =>
  0.1 + 0.9 * ((classes.get(key.replace(/^=/, '')) ?? RAREST) / RAREST)
