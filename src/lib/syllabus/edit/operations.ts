/** What can be done to a syllabus that is edited. Each gives a new form; one that finds nothing to do gives the same. */
import { emptyPoint, type PointForm, type SyllabusForm, type TopicForm } from './form'

export const setSyllabus = (
  form: SyllabusForm,
  fields: Partial<Pick<SyllabusForm, 'title' | 'note'>>,
): SyllabusForm => ({ ...form, ...fields })

export const setTopic = (
  form: SyllabusForm,
  key: string,
  fields: Partial<Pick<TopicForm, 'title' | 'caution'>>,
): SyllabusForm => eachTopic(form, (topic) => (topic.key === key ? { ...topic, ...fields } : topic))

export const setPoint = (
  form: SyllabusForm,
  key: string,
  fields: Partial<Omit<PointForm, 'key'>>,
): SyllabusForm =>
  eachTopic(form, (topic) =>
    topic.points.some((point) => point.key === key)
      ? {
          ...topic,
          points: topic.points.map((point) =>
            point.key === key ? { ...point, ...fields } : point,
          ),
        }
      : topic,
  )

/** A topic with one empty point, at the end; and its key. */
export function addTopic(form: SyllabusForm): { form: SyllabusForm; key: string } {
  const key = newKey(form)
  const point = emptyPoint(newKey(form, 2), `${form.topics.length + 1}.1`)
  const topic = { key, id: '', title: '', caution: '', points: [point] }
  return { form: { ...form, topics: [...form.topics, topic] }, key }
}

export const dropTopic = (form: SyllabusForm, key: string): SyllabusForm => ({
  ...form,
  topics: form.topics.filter((topic) => topic.key !== key),
})

/** Up (-1) or down (1); at the end of the list it stays where it is. */
export const moveTopic = (form: SyllabusForm, key: string, by: -1 | 1): SyllabusForm => {
  const at = form.topics.findIndex((topic) => topic.key === key)
  return at === -1 ? form : { ...form, topics: moved(form.topics, at, at + by) }
}

/** An empty point at the end of a topic, numbered on from the one before it; and its key. */
export function addPoint(
  form: SyllabusForm,
  topicKey: string,
): { form: SyllabusForm; key: string } {
  const key = newKey(form)
  const taken = new Set(allPoints(form).map(({ ref }) => ref))
  return {
    key,
    form: eachTopic(form, (topic, t) => {
      if (topic.key !== topicKey) return topic
      const ref = nextRef(topic.points.at(-1)?.ref ?? `${t + 1}.0`, taken)
      return { ...topic, points: [...topic.points, emptyPoint(key, ref)] }
    }),
  }
}

export const dropPoint = (form: SyllabusForm, key: string): SyllabusForm =>
  eachTopic(form, (topic) =>
    topic.points.some((point) => point.key === key)
      ? { ...topic, points: topic.points.filter((point) => point.key !== key) }
      : topic,
  )

/** Up (-1) or down (1) within its topic; at the end of the list it stays where it is. */
export const movePoint = (form: SyllabusForm, key: string, by: -1 | 1): SyllabusForm =>
  eachTopic(form, (topic) => {
    const at = topic.points.findIndex((point) => point.key === key)
    return at === -1 ? topic : { ...topic, points: moved(topic.points, at, at + by) }
  })

/** To the end of another topic. */
export function movePointTo(form: SyllabusForm, key: string, topicKey: string): SyllabusForm {
  const point = allPoints(form).find((one) => one.key === key)
  const there = form.topics.find((topic) => topic.key === topicKey)
  if (!point || !there || there.points.includes(point)) return form
  return eachTopic(dropPoint(form, key), (topic) =>
    topic.key === topicKey ? { ...topic, points: [...topic.points, point] } : topic,
  )
}

/** Numbers the points of a topic on from its first: 2.1, 2.2, 2.3, … */
export const renumber = (form: SyllabusForm, topicKey: string): SyllabusForm =>
  eachTopic(form, (topic, t) => {
    if (topic.key !== topicKey) return topic
    const { before, number } = lastNumber(topic.points[0]?.ref ?? '') ?? {
      before: `${t + 1}.`,
      number: 1,
    }
    return {
      ...topic,
      points: topic.points.map((point, i) => ({ ...point, ref: `${before}${number + i}` })),
    }
  })

export const allPoints = (form: SyllabusForm): PointForm[] =>
  form.topics.flatMap(({ points }) => points)

function eachTopic(
  form: SyllabusForm,
  change: (topic: TopicForm, index: number) => TopicForm,
): SyllabusForm {
  const topics = form.topics.map(change)
  return topics.every((topic, i) => topic === form.topics[i]) ? form : { ...form, topics }
}

function moved<T>(items: readonly T[], from: number, to: number): readonly T[] {
  const item = items[from]
  if (item === undefined || to < 0 || to >= items.length) return items
  const rest = items.filter((_, i) => i !== from)
  return [...rest.slice(0, to), item, ...rest.slice(to)]
}

/** A number of up to nine figures at the end of a ref: a longer one cannot be counted on exactly. */
function lastNumber(ref: string): { before: string; number: number } | undefined {
  const [, before = '', digits] = /^(.*?)(\d{1,9})$/s.exec(ref) ?? []
  return digits === undefined ? undefined : { before, number: Number(digits) }
}

function nextRef(ref: string, taken: ReadonlySet<string>): string {
  const { before, number } = lastNumber(ref) ?? { before: `${ref}.`, number: 0 }
  let next = number + 1
  while (taken.has(`${before}${next}`)) next += 1
  return `${before}${next}`
}

/** A key that no topic or point of the form has: `n` and a number. `ahead` counts from 1. */
function newKey(form: SyllabusForm, ahead = 1): string {
  const keys = form.topics.flatMap(({ key, points }) => [key, ...points.map((point) => point.key)])
  const used = keys.map((key) => Number(/^n(\d+)$/.exec(key)?.[1] ?? 0))
  return `n${used.reduce((most, one) => Math.max(most, one), 0) + ahead}`
}
