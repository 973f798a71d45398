import type { Idea, Point, Topic } from '../../syllabus/types'
import { tokenise } from '../1-statements/tokens'
import { wordsForMatching } from '../words/phrases'

/** What a student may shorten to its first letters, and which words stand beside which. */
export function phrasesOf(topic: Topic): string[] {
  const wordings = topic.points.flatMap((point) =>
    [...point.ideas, ...(point.steps ?? [])].flatMap((idea) =>
      idea.parts.flatMap((part) =>
        part.wordings.map(({ words }) => words.map(({ text }) => text).join(' ')),
      ),
    ),
  )
  return [topic.title, ...wordings]
}

/** Every word that a point has in any place. */
export function* wordsOf(point: Point, ideas: readonly Idea[]): Generator<string> {
  yield* wordsIn(point.text)
  for (const idea of [...ideas, ...(point.steps ?? [])]) {
    for (const part of idea.parts) {
      for (const { words } of part.wordings) {
        for (const slot of words) {
          yield* wordsIn(slot.text)
          if (slot.suffix) yield* wordsIn(slot.text + slot.suffix)
        }
      }
    }
  }
  for (const said of point.reject ?? []) yield* wordsIn(said)
  for (const wordings of Object.values(point.equation?.where ?? {})) {
    for (const { words } of wordings) for (const slot of words) yield* wordsIn(slot.text)
  }
}

/** The words of a text; a hyphenated word is one, and so are its two halves. */
export function wordsIn(text: string): readonly string[] {
  // Most wordings are a plain word.
  if (/^[a-z]+$/.test(text)) return [text]
  // A hyphenated word is a word of the topic, and so are its two halves.
  return [...tokenise(text), ...wordsForMatching(text)]
    .filter((token) => token.kind === 'word')
    .map((token) => token.text)
}
