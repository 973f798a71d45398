/** The steps by which a draft is put right: what each does, and what none of them may lose. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  beginHistory,
  joinLine,
  moveLine,
  problemsOf,
  putBack,
  redo,
  renumber,
  renumberDoubles,
  setRef,
  setRole,
  setText,
  setTitle,
  splitLine,
  step,
  topicsDownTo,
  undo,
  type DraftLine,
  type DraftTree,
} from '../../../../src/lib/syllabus/import'
import { readIdea, readValue } from '../../../../src/lib/syllabus'
import { outline } from './files'

const line = (key: number, role: DraftLine['role'], ref: string, text: string): DraftLine => ({
  key,
  role,
  ref,
  text,
})
const shore: DraftTree = {
  title: 'Shore',
  warnings: [],
  lines: [
    line(0, 'topic', '1', 'Drift'),
    line(1, 'point', '1.1', 'Waves come at an angle. Swash carries sand.'),
    line(2, 'out', '', 'About four lessons'),
    line(3, 'point', '1.2', 'Backwash runs straight down.'),
    line(4, 'topic', '2', 'Pools'),
    line(5, 'point', '2.1', 'Limpets graze.'),
  ],
}
const withMore = (key: number, more: DraftLine['more']): DraftTree => ({
  ...shore,
  lines: shore.lines.map((one) => (one.key === key && more ? { ...one, more } : one)),
})

describe('one step', () => {
  const same = outline(shore)
  const swapped = ['topic 2 Pools', 'point 2.1 Limpets graze.', ...same.slice(0, 3)]
  test.each([
    {
      does: 'a point is split, and the new one has a number that nobody has',
      to: splitLine(shore, 1, 24),
      is: [same[0], 'point 1.1 Waves come at an angle.', 'point 1.1.2 Swash carries sand.', ...same.slice(2)],
    },
    { does: 'nothing is split off at the end', to: splitLine(shore, 5, 14), is: same },
    {
      does: 'a topic is split into a topic and its first point',
      to: splitLine(setText(shore, 4, 'Pools hold water.'), 4, 5),
      is: [...same.slice(0, 3), 'topic 2 Pools', 'point 2.2 hold water.', same[4]],
    },
    {
      does: 'a point is joined to the one above, past what is left out',
      to: joinLine(shore, 3),
      is: [same[0], `${same[1]} Backwash runs straight down.`, ...same.slice(3)],
    },
    { does: 'the first line has none above it', to: joinLine(shore, 0), is: same },
    {
      does: 'a topic that is joined gives its points to the topic above',
      to: joinLine(shore, 4),
      is: [...same.slice(0, 2), `${same[2]} Pools`, same[4]],
    },
    {
      does: 'a point moves into the topic above',
      to: moveLine(shore, 5, -1),
      is: [...same.slice(0, 3), same[4], same[3]],
    },
    { does: 'a topic moves down with its points', to: moveLine(shore, 0, 1), is: swapped },
    { does: 'a topic moves up with its points', to: moveLine(shore, 4, -1), is: swapped },
    { does: 'the last stays last', to: moveLine(shore, 5, 1), is: same },
    {
      does: 'what was left out is put back as a point, with a number of its own',
      to: putBack(shore, 2),
      is: [...same.slice(0, 2), 'point 1.1.2 About four lessons', ...same.slice(2)],
    },
    {
      does: 'a heading that was left out is put back as a topic',
      to: putBack(setRole({ ...shore, lines: shore.lines.map((one) => (one.key === 4 ? { ...one, depth: 1 } : one)) }, 4, 'out'), 4),
      is: same,
    },
    { does: 'a line is dropped', to: setRole(shore, 5, 'out'), is: same.slice(0, 4) },
    {
      does: 'a topic is retitled, on the sieve that a file goes through',
      to: setText(shore, 4, ' Rock\u0007pools '),
      is: [...same.slice(0, 3), 'topic 2 Rock pools', same[4]],
    },
    {
      does: 'all are numbered anew: a second topic 1 is counted',
      to: renumber(setRef(shore, 4, '1')),
      is: [...same.slice(0, 3), 'topic 1 Pools', 'point 2.1 Limpets graze.'],
    },
    {
      does: 'a point before the first topic has a number that no topic has',
      to: renumber(moveLine(shore, 1, -1)),
      is: ['point 3.1 Waves come at an angle. Swash carries sand.', same[0], 'point 1.1 Backwash runs straight down.', ...same.slice(3)],
    },
    {
      does: 'a doubled number is given one of its own, the first keeps its',
      to: renumberDoubles(setRef(shore, 5, '1.1')),
      is: [...same.slice(0, 4), 'point 1.1.2 Limpets graze.'],
    },
  ])('$does', ({ to, is }) => expect(outline(to)).toEqual(is)) // prettier-ignore

  test('what one point alone can have keeps two apart', () => {
    const value = { ideas: [], value: readValue('12.4 h ± 0.2') }
    const two = {
      ...withMore(3, value),
      lines: withMore(3, value).lines.map((one) => (one.key === 1 ? { ...one, more: value } : one)),
    }
    expect(joinLine(two, 3)).toBe(two)
    const steps = withMore(1, { ideas: [], steps: [readIdea('mark')] })
    expect(joinLine(steps, 3).lines[1]?.more?.steps).toHaveLength(1)
    const ideas = {
      ...steps,
      lines: steps.lines.map((one) =>
        one.key === 3 ? { ...one, more: { ideas: [readIdea('backwash')] } } : one,
      ),
    }
    expect(joinLine(ideas, 3)).toBe(ideas)
  })
})

const text = fc.oneof(
  fc.constantFrom('a', 'Waves come. Sand goes.', '海岸 🌊 shore', 'x\ny', '<script>', '2.5 cm'),
  fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' }),
)
const more = fc.constantFrom<DraftLine['more']>(
  undefined,
  undefined,
  { ideas: [readIdea('wave / swash'), readIdea('angle')] },
  { ideas: [readIdea('gravity')], reject: ['it falls up'] },
  { ideas: [], value: readValue('12.4 h ± 0.2') },
  { ideas: [], steps: [readIdea('mark'), readIdea('wait')] },
  { ideas: [readIdea('a'), readIdea('b')], any: 1, cue: 'Which one?' },
)
const drafts = fc
  .array(
    fc.record({
      role: fc.constantFrom<DraftLine['role']>('topic', 'point', 'point', 'point', 'out'),
      ref: fc.constantFrom('', '1', '2', '1.1', '1.2', '2.1', 'a', '1.1.2'),
      text: text.filter((some) => some.trim() !== ''),
      depth: fc.option(fc.integer({ min: 1, max: 4 }), { nil: undefined }),
      more,
      caution: fc.constantFrom(undefined, undefined, 'Mind the tide.'),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((lines): DraftTree =>
    frozen({
      title: 'Shore',
      warnings: [],
      lines: lines.map(({ depth, more: own, caution, ...plain }, key) => ({
        ...plain,
        key,
        ...(plain.role === 'topic' && depth ? { depth } : {}),
        ...(plain.role === 'point' && own ? { more: own } : {}),
        ...(plain.role === 'topic' && caution ? { caution } : {}),
      })),
    }),
  )

/** No step may write into the draft it is given: undo gives that one back. */
function frozen<T extends object>(value: T): T {
  for (const inner of Object.values(value))
    if (typeof inner === 'object' && inner !== null) frozen(inner as object)
  return Object.freeze(value)
}

type Step = (tree: DraftTree) => DraftTree
const keyAt = ({ lines }: DraftTree, n: number) => lines[n % lines.length]!.key
const place = fc.nat(40)
const oneOf = fc.constantFrom<-1 | 1>(-1, 1)
/** Steps that may change how the draft is parted and in what order, and nothing that it says. */
const parting: fc.Arbitrary<Step> = fc.oneof(
  fc.tuple(place, place).map(
    ([n, at]): Step =>
      (tree) =>
        splitLine(tree, keyAt(tree, n), at),
  ),
  place.map(
    (n): Step =>
      (tree) =>
        joinLine(tree, keyAt(tree, n)),
  ),
  fc.tuple(place, oneOf).map(
    ([n, by]): Step =>
      (tree) =>
        moveLine(tree, keyAt(tree, n), by),
  ),
  fc.tuple(place, fc.constantFrom<DraftLine['role']>('topic', 'point', 'out')).map(
    ([n, role]): Step =>
      (tree) =>
        setRole(tree, keyAt(tree, n), role),
  ),
  fc.integer({ min: 1, max: 4 }).map(
    (depth): Step =>
      (tree) =>
        topicsDownTo(tree, depth),
  ),
  fc.constantFrom<Step>(renumber, renumberDoubles),
)
const anyStep = fc.oneof(
  parting,
  fc.tuple(place, text).map(
    ([n, said]): Step =>
      (tree) =>
        setText(tree, keyAt(tree, n), said),
  ),
  fc.tuple(place, text).map(
    ([n, ref]): Step =>
      (tree) =>
        setRef(tree, keyAt(tree, n), ref),
  ),
  text.map(
    (title): Step =>
      (tree) =>
        setTitle(tree, title),
  ),
)

const letters = (texts: readonly string[]) => [...texts.join('').replace(/\s/g, '')].sort().join('')
/** All that a draft says, whatever its order. */
const said = ({ lines }: DraftTree) => ({
  text: letters(lines.map((one) => one.text)),
  cautions: letters(lines.map(({ caution = '' }) => caution)),
  ideas: lines.flatMap((one) => one.more?.ideas.map(({ written }) => written) ?? []).sort(),
  rejects: lines.flatMap((one) => one.more?.reject ?? []).sort(),
  kinds: lines
    .flatMap(({ more: own }) =>
      (['value', 'steps', 'any', 'cue'] as const).filter((field) => own?.[field] !== undefined),
    )
    .sort(),
})

describe('any steps in any order', () => {
  test('nothing that is said is lost or said twice; keys stay apart', () => {
    let changed = 0
    fc.assert(
      fc.property(drafts, fc.array(parting, { maxLength: 15 }), (draft, steps) => {
        const end = steps.reduce((tree, one) => frozen(one(tree)), draft)
        if (end !== draft) changed += 1
        expect(said(end)).toEqual(said(draft))
        expect(new Set(end.lines.map(({ key }) => key)).size).toBe(end.lines.length)
      }),
      { numRuns: 500 },
    )
    expect(changed).toBeGreaterThan(200)
  })

  test('undo gives back each draft that was, redo each that came after', () => {
    fc.assert(
      fc.property(drafts, fc.array(anyStep, { maxLength: 20 }), (draft, steps) => {
        let history = beginHistory(draft)
        const seen = [draft]
        for (const one of steps) {
          history = step(history, frozen(one(history.tree)))
          if (history.tree !== seen.at(-1)) seen.push(history.tree)
        }
        for (const was of seen.slice(0, -1).reverse()) {
          history = undo(history)
          expect(history.tree).toBe(was)
        }
        expect(undo(history)).toEqual(history)
        for (const next of seen.slice(1)) {
          history = redo(history)
          expect(history.tree).toBe(next)
        }
      }),
      { numRuns: 300 },
    )
  })

  test('numbered anew, or doubles alone: every point has a number of its own', () => {
    fc.assert(
      fc.property(drafts, fc.array(anyStep, { maxLength: 8 }), (draft, steps) => {
        const end = steps.reduce((tree, one) => one(tree), draft)
        for (const tree of [renumber(end), renumberDoubles(end)]) {
          const refs = tree.lines.flatMap(({ role, ref }) => (role === 'point' ? [ref] : []))
          expect(new Set(refs).size).toBe(refs.length)
          expect(refs).not.toContain('')
          expect(
            problemsOf(tree).filter(({ message }) => /is taken|a number/.test(message)),
          ).toEqual([])
        }
        const first = new Set<string>()
        const doubles = renumberDoubles(end)
        end.lines.forEach((one, i) => {
          if (one.role === 'point' && one.ref !== '' && !first.has(one.ref))
            expect(doubles.lines[i]?.ref).toBe(one.ref)
          first.add(one.role === 'point' ? one.ref : '')
        })
      }),
      { numRuns: 300 },
    )
  })

  test('what was split and joined again, or moved there and back, is as it was', () => {
    fc.assert(
      fc.property(drafts, place, place, oneOf, (draft, n, at, by) => {
        const key = keyAt(draft, n)
        const split = splitLine(draft, key, at)
        if (split !== draft) {
          const made = split.lines[(n % draft.lines.length) + 1]!
          const joined = joinLine(split, made.key)
          const bare = (tree: DraftTree) =>
            tree.lines.map((one) => ({ ...one, text: one.text.replace(/\s/g, '') }))
          expect(bare(joined)).toEqual(bare(draft))
        }
        const moved = moveLine(draft, key, by)
        if (moved !== draft)
          expect(moveLine(moved, key, by === 1 ? -1 : 1).lines).toEqual(draft.lines)
      }),
      { numRuns: 500 },
    )
  })
})
