/** The cue on a card: what its author wrote, else a question that gives nothing away but what kind of answer it wants. */
import type { Point } from '../syllabus'
import { stepsOf, symbolRows } from './sheet-points'
import { counted, opening } from './words'

/** The card names its topic beside it. */
export function cardCue(point: Point): string {
  if (point.cue) return point.cue
  const { equation, any, text } = point
  if (equation?.kind === 'chemical') return 'Write the reaction in full.'
  if (equation) {
    const wanted = symbolRows(point)[0]?.words
    return wanted ? `${opening(wanted)}: which equation?` : 'Which equation?'
  }
  const steps = stepsOf(point)
  if (steps) {
    const which = `which ${counted(steps.steps.length, 'step')}, in order?`
    return steps.lead ? `${steps.lead}: ${which}` : opening(which)
  }
  // "Name two landforms: a spit, a bar …": what stands before the colon asks, what follows answers.
  const asked = any === undefined ? undefined : /^(?:Name|Give|State)\s[^:]*(?=:)/.exec(text)?.[0]
  if (asked) return `${asked}.`
  return `${openingWords(text)} …`
}

/** The first words: a fifth of them, one at least and three at most. */
function openingWords(text: string): string {
  const words = text.split(/\s+/)
  return words.slice(0, Math.min(3, Math.max(1, Math.floor(words.length / 5)))).join(' ')
}
