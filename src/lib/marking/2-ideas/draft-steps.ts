import { isVerb, maybeVerb } from '../words/verbs'

const METHOD = /^[^:]{3,120}:\s*(?<steps>.+)$/s
/** `To measure the drift, mark a pebble, then …`: what it is for, and what is done. */
const AIM = /^(?:to|for|in|by|before|after)\b[^,]{2,80},\s*/i
const THEN = /,?\s+(?:and\s+)?then\s+/i
const NEXT = /\s*[,;]\s*(?:(?:and|then|finally|next)\s+)*|\s+(?:and\s+)?then\s+/i
/** A list of fewer is no method. */
const LEAST = 3

/**
 * `Measuring …: mark the pebble, drop it, time it`, `To measure …, mark the pebble, then drop it, then time it`: the texts of the steps of a
 * method; [] where the text is none.
 */
export function stepTexts(text: string): string[] {
  const list = METHOD.exec(text)?.groups?.steps
  const plain = (list ?? text.replace(AIM, '')).replace(/\.\s*$/, '')
  const steps = plain
    .split(list === undefined ? THEN : NEXT)
    .map((step) => step.trim())
    .filter(Boolean)
  const does = steps.filter((step) => doesSomething(step)).length
  return steps.length >= LEAST && does * 2 > steps.length ? steps : []
}

// Its first words are a command (`add the acid`) or say who does what (`the client sends`).
function doesSomething(step: string): boolean {
  const words = step.toLowerCase().match(/[a-z]+/g) ?? []
  return words.slice(0, 3).some((word, i) => isVerb(word) || (i === 0 && maybeVerb(word)))
}
