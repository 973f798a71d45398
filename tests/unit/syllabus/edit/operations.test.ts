import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addPoint,
  addTopic,
  allPoints,
  beginEdits,
  changeEdits,
  dropPoint,
  dropTopic,
  emptyForm,
  formOf,
  movePoint,
  movePointTo,
  moveTopic,
  redoEdit,
  renumber,
  setPoint,
  setSyllabus,
  setTopic,
  undoEdit,
  type SyllabusForm,
} from '../../../../src/lib/syllabus'
import { syllabi } from '../arbitrary'

/** Topics as their titles with their points' refs. */
const shape = (form: SyllabusForm) =>
  form.topics.map(({ title, points }) => `${title}: ${points.map(({ ref }) => ref).join(' ')}`)

const point = (ref: string) => ({ ref, text: `about ${ref}`, ideas: [] })
const form = formOf({
  format: 1,
  id: 'shore',
  title: 'Shore',
  topics: [
    { id: 'drift', title: 'Drift', points: ['2.1', '2.2', '2.4'].map(point) },
    { id: 'pools', title: 'Pools', points: ['3.1', 'a'].map(point) },
  ],
})
const keyOf = (ref: string) => allPoints(form).find((one) => one.ref === ref)!.key

describe('what can be done to a syllabus', () => {
  test.each([
    { does: 'a point moves down', to: movePoint(form, keyOf('2.1'), 1), is: ['Drift: 2.2 2.1 2.4', 'Pools: 3.1 a'] },
    { does: 'the first point stays first', to: movePoint(form, keyOf('2.1'), -1), is: shape(form) },
    { does: 'the last point stays last', to: movePoint(form, keyOf('2.4'), 1), is: shape(form) },
    { does: 'a point goes to another topic', to: movePointTo(form, keyOf('2.2'), 't1'), is: ['Drift: 2.1 2.4', 'Pools: 3.1 a 2.2'] },
    { does: 'a point that goes to its own topic stays', to: movePointTo(form, keyOf('2.2'), 't0'), is: shape(form) },
    { does: 'a point is dropped', to: dropPoint(form, keyOf('3.1')), is: ['Drift: 2.1 2.2 2.4', 'Pools: a'] },
    { does: 'a topic moves up', to: moveTopic(form, 't1', -1), is: ['Pools: 3.1 a', 'Drift: 2.1 2.2 2.4'] },
    { does: 'a topic is dropped', to: dropTopic(form, 't0'), is: ['Pools: 3.1 a'] },
    { does: 'a topic is renumbered on from its first point', to: renumber(form, 't0'), is: ['Drift: 2.1 2.2 2.3', 'Pools: 3.1 a'] },
    { does: 'a point is added with the next free number', to: addPoint(form, 't0').form, is: ['Drift: 2.1 2.2 2.4 2.5', 'Pools: 3.1 a'] },
    { does: 'after a ref without a number one is begun', to: addPoint(form, 't1').form, is: ['Drift: 2.1 2.2 2.4', 'Pools: 3.1 a a.1'] },
    { does: 'a topic is added with a point', to: addTopic(form).form, is: ['Drift: 2.1 2.2 2.4', 'Pools: 3.1 a', ': 3.1'] },
    { does: 'an unknown key does nothing', to: movePoint(form, 'no such', 1), is: shape(form) },
  ])('$does', ({ to, is }) => { expect(shape(to)).toEqual(is) }) // prettier-ignore

  test('a number that another topic has is passed over', () => {
    const clash = setPoint(form, keyOf('3.1'), { ref: '2.5' })
    expect(allPoints(addPoint(clash, 't0').form).map(({ ref }) => ref)).toContain('2.6')
  })

  test('a topic that is renamed keeps its id, and a syllabus too', () => {
    const renamed = setSyllabus(setTopic(form, 't0', { title: 'Sand' }), { title: 'Coast' })
    expect(renamed).toMatchObject({ id: 'shore', title: 'Coast' })
    expect(renamed.topics[0]).toMatchObject({ id: 'drift', title: 'Sand' })
  })

  test('new keys are never taken', () => {
    let now = emptyForm('New')
    for (let i = 0; i < 5; i += 1) now = addPoint(addTopic(now).form, 'n1').form
    const keys = now.topics.flatMap(({ key, points }) => [key, ...points.map((one) => one.key)])
    expect(new Set(keys).size).toBe(keys.length)
  })
})

describe('undo and redo', () => {
  const step = (what: string, atMs: number, field?: string) => ({
    what,
    atMs,
    ...(field === undefined ? {} : { field }),
  })

  test('typing in one field is one step until there is a pause', () => {
    const typed = (title: string) => setSyllabus(form, { title })
    let edits = beginEdits(form)
    edits = changeEdits(edits, typed('S'), step('the title', 0, 'title'))
    edits = changeEdits(edits, typed('Sa'), step('the title', 400, 'title'))
    edits = changeEdits(edits, typed('San'), step('the title', 5000, 'title'))
    expect(edits.past).toHaveLength(2)
    expect(undoEdit(edits).form.title).toBe('Sa')
    expect(undoEdit(undoEdit(edits)).form.title).toBe('Shore')
  })

  test('typing in another field, or after an undo, is a step of its own', () => {
    let edits = beginEdits(form)
    edits = changeEdits(edits, setSyllabus(form, { title: 'a' }), step('the title', 0, 'title'))
    edits = changeEdits(edits, setSyllabus(edits.form, { note: 'b' }), step('the note', 1, 'note'))
    expect(edits.past).toHaveLength(2)
    edits = undoEdit(edits)
    edits = changeEdits(edits, setSyllabus(edits.form, { title: 'c' }), step('t', 2, 'title'))
    expect(edits.past).toHaveLength(2)
    expect(edits.future).toEqual([])
  })

  test('nothing done is no step; nothing to take back changes nothing', () => {
    const edits = beginEdits(form)
    expect(changeEdits(edits, form, step('nothing', 0))).toBe(edits)
    expect(undoEdit(edits)).toEqual(edits)
    expect(redoEdit(edits)).toEqual(edits)
  })

  test('any steps taken back and done again end where they ended', () => {
    const ops = fc.array(fc.nat(6), { maxLength: 20 })
    fc.assert(
      fc.property(syllabi, ops, (syllabus, steps) => {
        const begun = formOf(syllabus)
        const done = steps.reduce((edits, op, i) => {
          const { form: now } = edits
          const topic = now.topics[op % Math.max(1, now.topics.length)]?.key ?? ''
          const some = allPoints(now)[op * 3]?.key ?? ''
          const next = [
            () => addPoint(now, topic).form,
            () => dropPoint(now, some),
            () => movePoint(now, some, 1),
            () => movePointTo(now, some, topic),
            () => addTopic(now).form,
            () => renumber(now, topic),
            () => setPoint(now, some, { text: `step ${i}` }),
          ][op]!()
          return changeEdits(edits, next, { what: `step ${i}`, atMs: i })
        }, beginEdits(begun))
        const count = done.past.length
        let back = done
        for (let i = 0; i < count; i += 1) back = undoEdit(back)
        expect(back.form).toStrictEqual(begun)
        let again = back
        for (let i = 0; i < count; i += 1) again = redoEdit(again)
        expect(again).toStrictEqual(done)
      }),
      { numRuns: 200 },
    )
  })
})
