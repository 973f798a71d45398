/** The cue on a card: what its author wrote, else a question that gives nothing away but what kind of answer it wants. */
import type { Point } from '../syllabus'
import { counted } from './words'

export function cardCue(point: Point, topicTitle: string): string {
  if (point.cue) return point.cue
  if (point.equation)
    return point.equation.kind === 'chemical' ? 'Which reaction?' : 'Which equation?'
  if (point.steps) return `Which ${counted(point.steps.length, 'step')}, in order?`
  if (point.any !== undefined) return `Name ${point.any}.`
  if (point.value) return 'Which value, with its unit?'
  return `What does point ${point.ref} of ${topicTitle} say?`
}
