import { Document, Scalar, isMap, isSeq } from 'yaml'
import { writeWordings } from './notation'
import { topicId } from './slug'
import type { Equation, Point, Syllabus, Topic } from './types'

/** The syllabus as a file; `readSyllabus` of it gives an equal syllabus. */
export function writeSyllabus(syllabus: Syllabus): string {
  const { format, title, note, topics } = syllabus
  const id = ownId(syllabus)
  const fields = present({ format, title, id, note, topics: topics.map(topicFields) })
  const document = new Document(fields, { aliasDuplicateObjects: false })
  spaceTopics(document)
  // Folding is left to the editor: a line of the file is a line of the text.
  return document.toString({ lineWidth: 0 })
}

function topicFields(topic: Topic): object {
  const { title, caution, points } = topic
  return present({ title, id: ownId(topic), caution, points: points.map(pointFields) })
}

/** An id is written only where the title alone would not give it. */
const ownId = ({ id, title }: { readonly id: string; readonly title: string }) =>
  id === topicId(title) ? undefined : id

function pointFields(point: Point): object {
  const { ref, text, cue, ideas, any, reject, equation, value, steps } = point
  return present({
    ref: quoted(ref),
    text,
    cue,
    any,
    ideas: ideas.length > 0 ? ideas.map((idea) => idea.written) : undefined,
    reject,
    equation: equation?.written,
    where: equation?.kind === 'algebraic' ? whereFields(equation) : undefined,
    value: value?.written,
    steps: steps?.map((step) => step.written),
  })
}

function whereFields({ where }: Equation): object {
  return Object.fromEntries(
    Object.entries(where).map(([symbol, wordings]) => [symbol, writeWordings(wordings)]),
  )
}

// Every ref in quotes, also where YAML needs none, so that whoever adds one by hand sees how it is done.
function quoted(text: string): Scalar {
  const scalar = new Scalar(text)
  scalar.type = Scalar.QUOTE_DOUBLE
  return scalar
}

function present(fields: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined))
}

/** An empty line before each topic and point but the first. */
function spaceTopics(document: Document): void {
  const topics: unknown = document.get('topics')
  if (!isSeq(topics)) return
  topics.items.forEach((topic, i) => {
    if (!isMap(topic)) return
    if (i > 0) topic.spaceBefore = true
    const points: unknown = topic.get('points')
    if (!isSeq(points)) return
    points.items.forEach((point, j) => {
      if (isMap(point) && j > 0) point.spaceBefore = true
    })
  })
}
