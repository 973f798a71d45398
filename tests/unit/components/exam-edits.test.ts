import { describe, expect, test } from 'vitest'
import { withExam, withoutExam } from '../../../src/lib/components/exam-edits'
import { defaultSettings, type Exam } from '../../../src/lib/recall'

const paper1: Exam = { syllabusId: 'shores', day: '2027-06-01', title: 'Paper 1', topicIds: ['a'] }
const paper2: Exam = { syllabusId: 'shores', day: '2027-05-20', title: 'Paper 2' }
const whole: Exam = { syllabusId: 'shores', day: '2027-06-01' }
const settings = (...exams: Exam[]) => ({ ...defaultSettings, exams })

describe('exams in the settings', () => {
  test.each([
    { why: 'by day', before: [paper1], exam: paper2, after: [paper2, paper1] },
    { why: 'the same is there once', before: [paper1], exam: { ...paper1 }, after: [paper1] },
    { why: 'another of the same day', before: [paper1], exam: whole, after: [paper1, whole] },
  ])('added: $why', ({ before, exam, after }) =>
    expect(withExam(settings(...before), exam).exams).toEqual(after),
  )

  test('changed: in the place of what it was', () => {
    const later = { ...paper1, day: '2027-06-09' }
    expect(withExam(settings(paper1, whole), later, { ...paper1 }).exams).toEqual([whole, later])
  })

  test('changed where another window removed it: it is there', () => {
    expect(withExam(settings(), paper2, paper1).exams).toEqual([paper2])
  })

  test('removed: that one and no other', () => {
    expect(withoutExam(settings(paper1, whole), { ...whole }).exams).toEqual([paper1])
  })
})
