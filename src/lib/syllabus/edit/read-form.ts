/**
 * A form -> a syllabus, or its mistakes at their fields, in the words in which a file's mistakes are told: it is written
 * as a file, and read by the reader of files.
 */
import { readSyllabus } from '../read'
import { topicId } from '../slug'
import type { Syllabus, Topic } from '../types'
import { mistakesByField, type FieldPath } from './field-mistakes'
import { emptyPoint, type SyllabusForm, type TopicForm } from './form'
import { writeForm } from './write-form'

export type FormRead =
  | { readonly ok: true; readonly syllabus: Syllabus }
  | {
      readonly ok: false
      /** The first mistake of each field, by its path. */
      readonly mistakes: ReadonlyMap<FieldPath, string>
      /** How many mistakes there are, those of fields with several included. */
      readonly count: number
    }

/**
 * Reads topic by topic, and no topic a second time: as one file a syllabus of a thousand points takes half a second, and
 * a form is read at every pause in the typing. Only where two topics may clash is the whole read as one.
 */
export function readForm(form: SyllabusForm): FormRead {
  if (mayClash(form)) return readPart(form)
  const head = readPart({ ...form, topics: form.topics.length === 0 ? [] : [FILLER] })
  const topics = form.topics.map(readOne)
  const parts = [head, ...topics]
  const read = topics.flatMap((part) => (part.ok ? part.syllabus.topics : []))
  if (head.ok && read.length === topics.length)
    return { ok: true, syllabus: { ...head.syllabus, topics: read } }
  const mistakes = new Map(head.ok ? [] : head.mistakes)
  topics.forEach((part, t) => {
    if (part.ok) return
    for (const [path, message] of part.mistakes)
      mistakes.set(path.replace(/^topics\/0/, `topics/${t}`), message)
  })
  return {
    ok: false,
    mistakes,
    count: parts.reduce((sum, part) => sum + (part.ok ? 0 : part.count), 0),
  }
}

/**
 * One topic of a form as far as it can be read: points with a mistake are left out, so that the others can be tried
 * and looked through meanwhile. `undefined` where nothing of it can be read.
 */
export function readTopic(form: SyllabusForm, key: string): Topic | undefined {
  const topic = form.topics.find((one) => one.key === key)
  if (!topic) return undefined
  const whole = readOne(topic)
  if (whole.ok) return whole.syllabus.topics[0]
  const wrong = new Set([...whole.mistakes.keys()].map((path) => path.split('/')[3]))
  const points = topic.points.filter((_, i) => !wrong.has(String(i)))
  const title = topic.title.replace(/\s+/g, ' ').trim().slice(0, 200) || 'x'
  const rest = readOne({ ...topic, title, caution: '', points })
  return rest.ok ? rest.syllabus.topics[0] : undefined
}

/** A topic that can be read, to stand in for those that are read apart. */
const FILLER: TopicForm = {
  key: '',
  id: '',
  title: 'x',
  caution: '',
  points: [{ ...emptyPoint('', 'x'), text: 'x' }],
}

/** A ref or an id that two topics have; within one its own reading tells it. */
function mayClash({ topics }: SyllabusForm): boolean {
  const refs = topics.flatMap(({ points }) => [...new Set(points.map(({ ref }) => ref.trim()))])
  const ids = topics.map(({ id, title }) => id || topicId(title))
  return [refs, ids].some((names) => {
    const given = names.filter((name) => name !== '')
    return new Set(given).size < given.length
  })
}

const known = new WeakMap<TopicForm, FormRead>()

/** A form is never changed in place, so that what was read of a topic stays right. */
function readOne(topic: TopicForm): FormRead {
  const read = known.get(topic) ?? readPart({ id: '', title: 'x', note: '', topics: [topic] })
  known.set(topic, read)
  return read
}

function readPart(form: SyllabusForm): FormRead {
  const source = writeForm(form)
  const read = readSyllabus(source)
  return read.ok
    ? { ok: true, syllabus: read.syllabus }
    : {
        ok: false,
        mistakes: mistakesByField(form, source, read.mistakes),
        count: read.mistakes.length + read.more,
      }
}
