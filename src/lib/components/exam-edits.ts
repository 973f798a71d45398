/** Exams added to the settings, changed and taken out. An exam has no id: it is told by all that it says. */
import type { Exam, Settings } from '$lib/recall'

const same = (a: Exam, b: Exam): boolean =>
  a.syllabusId === b.syllabusId &&
  a.day === b.day &&
  a.title === b.title &&
  JSON.stringify(a.topicIds) === JSON.stringify(b.topicIds)

export const withoutExam = (settings: Settings, exam: Exam): Settings => ({
  ...settings,
  exams: settings.exams.filter((kept) => !same(kept, exam)),
})

/** With `exam` in the place of `before`, or as a further one; the same exam is never there twice. By day. */
export function withExam(settings: Settings, exam: Exam, before?: Exam): Settings {
  const others = withoutExam(before ? withoutExam(settings, before) : settings, exam).exams
  const exams = [...others, exam].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
  return { ...settings, exams }
}
