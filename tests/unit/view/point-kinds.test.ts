import { expect, test } from 'vitest'
import { readIdea, readValue, type Point } from '../../../src/lib/syllabus'
import { kindOf, kindWords } from '../../../src/lib/view/point-kinds'

const point = (rest: Partial<Point>): Point => ({ ref: '1', text: 'x', ideas: [], ...rest })
const ideas = ['groyne', 'jetty', 'sea wall'].map(readIdea)
const equation = { written: '2Br⁻ → Br₂ + 2e⁻', kind: 'chemical' as const, where: {} }

test.each([
  { given: point({}), kind: 'drafted' },
  { given: point({ ideas }), kind: 'ideas' },
  { given: point({ ideas, any: 2 }), kind: 'list' },
  { given: point({ ideas, any: 3 }), kind: 'ideas', why: 'any three of three are all' },
  { given: point({ ideas, value: readValue('9.8 N/kg') }), kind: 'value' },
  { given: point({ ideas, equation }), kind: 'equation' },
  { given: point({ steps: ideas }), kind: 'method' },
])('$kind', ({ given, kind }) => {
  expect(kindOf(given)).toBe(kind)
})

test('the kinds of a topic in words, with their counts', () => {
  expect(
    kindWords([
      point({ ideas }),
      point({ steps: ideas }),
      point({ ideas }),
      point({ equation }),
      point({}),
    ]),
  ).toBe(
    '2 with key ideas, 1 whose ideas are drafted from the text, 1 equation and 1 method in steps',
  )
  expect(kindWords([])).toBe('')
})
