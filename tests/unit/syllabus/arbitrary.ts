/** Any syllabus at all, with texts that are awkward in a file. */
import fc from 'fast-check'
import {
  readIdea,
  readValue,
  readWordings,
  topicId,
  type Equation,
  type Point,
  type Syllabus,
  type Topic,
} from '../../../src/lib/syllabus'

// Texts that YAML would take for something else, or that need quotes, next to any text at all.
const awkward = fc.constantFrom(
  'null', '~', 'true', 'no', '2.10', '1e3', '0x1F', '- a', '? a', 'a: b', 'a #b', '#', '*a', '&a', '!a', '%a', '@a', '`a`',
  '[a]', '{a}', '"a"', "'a'", 'a\nb', '  a\n b', 'a\n\n\nb', 'a \n', '|', '>', '---', '...', '<<', 'Ünïcödé 海岸 🌊', 'a\tb', '\u2028a\u0085b',
  '\ud800', '\uFEFFa', `${'long '.repeat(60)}end`,
) // prettier-ignore
const text = fc
  .oneof(awkward, fc.string({ minLength: 1 }), fc.string({ minLength: 1, unit: 'binary' }))
  .map((some) => some.trim().replaceAll('\0', ''))
  .filter((some) => some.trim() === some && some !== '')
const line = text
  .map((some) =>
    some
      .replace(/[\n\r]+/g, ' ')
      .slice(0, 150)
      .trim(),
  )
  .filter((some) => some !== '')
const title = line.filter((some) => topicId(some) !== '')

const idea = fc
  .constantFrom(
    'gravity',
    'waves / swash',
    '"backwash" / back-wash',
    'mark + pebble',
    '(at the) waterline',
    'oblique(ly)',
    'Na+ ions',
    'true',
    '# / *',
    "water's edge",
  )
  .map(readIdea)
const ideas = fc.array(idea, { minLength: 1, maxLength: 4 })
const value = fc
  .constantFrom('9.8 N/kg ± 0.2', '1.30', '-20 °C', '3.0 × 10^8 m/s ± 0.1 × 10^8', '50 % ± 5')
  .map(readValue)
const equation = fc.constantFrom<Equation>(
  {
    written: 'v = f × λ',
    kind: 'algebraic' as const,
    where: {
      v: readWordings('(wave) speed / "celerity"'),
      f: readWordings('frequency'),
      λ: readWordings('wavelength'),
    },
  },
  {
    written: 'n = y + 1',
    kind: 'algebraic' as const,
    where: { n: readWordings('no'), y: readWordings('yes') },
  },
  { written: '2Br⁻ → Br₂ + 2e⁻', kind: 'chemical' as const, where: {} },
)
const reject = fc.array(text, { minLength: 1, maxLength: 2 })
const said = fc
  .record({ ideas, value, equation, reject }, { requiredKeys: [] })
  .chain((some) =>
    some.ideas
      ? fc
          .option(fc.integer({ min: 1, max: some.ideas.length }), { nil: undefined })
          .map((any) => (any === undefined ? some : { ...some, any }))
      : fc.constant(some),
  )
  .map((some) => ({ ideas: [], ...some }))
const method = fc
  .record({ steps: ideas, reject }, { requiredKeys: ['steps'] })
  .map((some) => ({ ideas: [], ...some }))
const alike = (a: string, b: string) =>
  a.replace(/[^\p{L}\p{N}]/gu, '').toLowerCase() === b.replace(/[^\p{L}\p{N}]/gu, '').toLowerCase()
const point = fc
  .tuple(line, text, fc.oneof(said, method))
  .map(([ref, words, rest]): Point => ({ ref, text: words, ...rest }))
const asked = fc
  .tuple(point, line)
  .filter(([{ text: words }, cue]) => !alike(words, cue))
  .map(([one, cue]): Point => ({ ...one, cue }))

const topic = fc
  .record(
    {
      title,
      caution: text,
      ownId: fc.constantFrom('own-id', 'own-id-2', '海岸'),
      points: fc.array(fc.oneof(point, asked), { minLength: 1, maxLength: 3 }),
    },
    { requiredKeys: ['title', 'points'] },
  )
  .map(({ ownId, ...rest }): Topic => ({ id: ownId ?? topicId(rest.title), ...rest }))

export const syllabi = fc
  .record(
    {
      title,
      ownId: fc.constantFrom('own-id', '海岸'),
      note: text,
      topics: fc.uniqueArray(topic, { selector: ({ id }) => id, minLength: 1, maxLength: 3 }),
    },
    { requiredKeys: ['title', 'topics'] },
  )
  .map(({ topics, ownId, ...rest }): Syllabus => {
    const refs = new Set<string>()
    const unique = topics.map((one) => ({
      ...one,
      points: one.points.map((each, i) => {
        const ref = refs.has(each.ref) ? `${one.id}.${i}` : each.ref
        refs.add(ref)
        return { ...each, ref }
      }),
    }))
    return { format: 1, id: ownId ?? topicId(rest.title), ...rest, topics: unique }
  })
  .filter(({ topics }) => {
    const refs = topics.flatMap(({ points }) => points.map(({ ref }) => ref))
    return new Set(refs).size === refs.length
  })
