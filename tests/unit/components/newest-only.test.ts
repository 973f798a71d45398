import { expect, test } from 'vitest'
import { newestOnly } from '../../../src/lib/components/editor/newest-only'

/** Work that ends when the test says so. */
function held() {
  const asked: string[] = []
  const ends: { done: () => void; fail: () => void }[] = []
  const answers: string[] = []
  const ask = newestOnly(
    (question: string) => {
      asked.push(question)
      return new Promise<string>((done, fail) =>
        ends.push({ done: () => done(`${question}!`), fail: () => fail(new Error('no')) }),
      )
    },
    (answer) => answers.push(answer),
  )
  return { ask, asked, answers, ends, settled: () => new Promise((done) => setTimeout(done)) }
}

test('one at a time; of those that wait only the newest is done', async () => {
  const { ask, asked, answers, ends, settled } = held()
  for (const question of ['a', 'b', 'c']) ask(question)
  expect(asked).toEqual(['a'])
  ends[0]!.done()
  await settled()
  expect(asked).toEqual(['a', 'c'])
  ends[1]!.done()
  await settled()
  expect(answers).toEqual(['a!', 'c!'])
})

test('what fails does not stop the next', async () => {
  const { ask, asked, answers, ends, settled } = held()
  ask('a')
  ask('b')
  ends[0]!.fail()
  await settled()
  ends[1]!.done()
  await settled()
  expect(asked).toEqual(['a', 'b'])
  expect(answers).toEqual(['b!'])
})
