import type { Topic } from '../../lib/syllabus'
import { CliError, readText } from '../files'

export interface ShortAnswer {
  readonly set: string
  readonly question: string
  readonly references: readonly string[]
  readonly answer: string
  readonly correct: boolean
}

/** An answer with the topic it is held against: each reference a point with no ideas, the question as the title. */
export interface Asked extends ShortAnswer {
  readonly topic: Topic
}

export function readAnswers(paths: readonly string[]): Asked[] {
  const topics = new Map<string, Topic>()
  return paths.flatMap(answersIn).map((answer) => {
    const id = JSON.stringify([answer.question, answer.references])
    const topic = topics.get(id) ?? topicOf(answer)
    topics.set(id, topic)
    return { ...answer, topic }
  })
}

function topicOf({ question, references }: ShortAnswer): Topic {
  return {
    id: 'answer',
    title: question,
    points: references.map((text, i) => ({ ref: String(i + 1), text, ideas: [] })),
  }
}

function answersIn(path: string): ShortAnswer[] {
  return readText(path)
    .split('\n')
    .map((line, i) => ({ line, number: i + 1 }))
    .filter(({ line }) => line.trim() !== '')
    .map(({ line, number }) => answerAt(line, `${path}:${number}`))
}

function answerAt(line: string, place: string): ShortAnswer {
  const read = parsed(line, place)
  const { set, question, references, answer, correct } = read
  const texts = Array.isArray(references) && references.every((r) => typeof r === 'string')
  if (
    typeof set !== 'string' ||
    typeof question !== 'string' ||
    typeof answer !== 'string' ||
    typeof correct !== 'boolean' ||
    !texts
  )
    throw new CliError(
      `${place}: an answer needs "set", "question", "references" (texts), "answer" and "correct" (true or false)`,
    )
  return { set, question, references: references as string[], answer, correct }
}

function parsed(line: string, place: string): Partial<Record<keyof ShortAnswer, unknown>> {
  try {
    const value: unknown = JSON.parse(line)
    if (typeof value === 'object' && value !== null) return value
  } catch {
    // told below
  }
  throw new CliError(`${place}: not a JSON object`)
}
