import { isNounOrVerb, isVerbForm } from '../lexicon'

/** Is the word a form of a verb, and only that, by compromise's lexicon? */
export const isVerb = (word: string): boolean => word.endsWith("n't") || isVerbForm(word)

/** Words that are a noun or a verb by their place: pushes, runs, moves. */
export const maybeVerb = isNounOrVerb
