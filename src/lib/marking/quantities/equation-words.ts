import { table } from '../words/table'
import type { Term } from './algebra'

/** A piece of what a student wrote, seen as mathematics. `from` and `to` are tokens. */
export type Piece = { readonly from: number; readonly to: number } & (
  | { readonly is: 'term'; readonly term: Term }
  | { readonly is: 'equals' }
  | { readonly is: 'by' | 'and' | 'to' | 'from' | 'fill' | 'gap' }
  | { readonly is: 'prefix'; readonly word: Prefix }
)
export type Prefix =
  | 'divide'
  | 'multiply'
  | 'product'
  | 'ratio'
  | 'sum'
  | 'difference'
  | 'subtract'
  | 'root'
  | 'twice'
  | 'half'

export const op = (o: Extract<Term, { kind: 'op' }>['op']): Term => ({ kind: 'op', op: o })
export const num = (value: number): Term => ({ kind: 'number', value })

// Longest first. A phrase of the mathematics classroom, and what it stands for.
export type Word =
  { readonly is: 'term'; readonly term: Term } | { readonly is: 'prefix'; readonly word: Prefix }
// `take the mass and divide it by the volume`: what comes before is what is divided.
const CARRIED_ON: readonly (readonly [string, Word])[] = ['and', 'then', 'and then']
  .flatMap((joint) => ['it by', 'that by', 'this by', 'them by', 'by'].map((rest) => [joint, rest]))
  .flatMap(([joint, rest]): [string, Word][] => [
    [`${joint} divide ${rest}`, { is: 'term', term: op('/') }],
    [`${joint} multiply ${rest}`, { is: 'term', term: op('*') }],
    [`${joint} times ${rest}`, { is: 'term', term: op('*') }],
  ])
const WORDS: readonly (readonly [string, Word])[] = [
  ...CARRIED_ON,
  ['divided by', { is: 'term', term: op('/') }],
  ['multiplied by', { is: 'term', term: op('*') }],
  ['multiplied with', { is: 'term', term: op('*') }],
  ['times by', { is: 'term', term: op('*') }],
  ['timesed by', { is: 'term', term: op('*') }],
  ['added to', { is: 'term', term: op('+') }],
  ['take away', { is: 'term', term: op('-') }],
  ['square root of', { is: 'prefix', word: 'root' }],
  ['square root', { is: 'prefix', word: 'root' }],
  ['product of', { is: 'prefix', word: 'product' }],
  ['ratio of', { is: 'prefix', word: 'ratio' }],
  ['sum of', { is: 'prefix', word: 'sum' }],
  ['difference between', { is: 'prefix', word: 'difference' }],
  ['times', { is: 'term', term: op('*') }],
  ['over', { is: 'term', term: op('/') }],
  ['per', { is: 'term', term: op('/') }],
  ['plus', { is: 'term', term: op('+') }],
  ['minus', { is: 'term', term: op('-') }],
  ['less', { is: 'term', term: op('-') }],
  ['divide', { is: 'prefix', word: 'divide' }],
  ['dividing', { is: 'prefix', word: 'divide' }],
  ['divides', { is: 'prefix', word: 'divide' }],
  ['multiply', { is: 'prefix', word: 'multiply' }],
  ['multiplying', { is: 'prefix', word: 'multiply' }],
  ['subtract', { is: 'prefix', word: 'subtract' }],
  ['subtracting', { is: 'prefix', word: 'subtract' }],
  ['take', { is: 'prefix', word: 'subtract' }],
  ['taking', { is: 'prefix', word: 'subtract' }],
  ['twice', { is: 'prefix', word: 'twice' }],
  ['double', { is: 'prefix', word: 'twice' }],
  ['half', { is: 'prefix', word: 'half' }],
  ['squared', { is: 'term', term: op('^') }],
  ['cubed', { is: 'term', term: op('^') }],
]
/** Does the phrase go on with what was spoken of before it? */
export const carriesOn = (words: readonly string[]): boolean =>
  words[0] === 'and' || words[0] === 'then'

export const WORDS_BY_FIRST = new Map<string, [string[], Word][]>()
for (const [phrase, word] of WORDS) {
  const words = phrase.split(' ')
  WORDS_BY_FIRST.set(words[0]!, [...(WORDS_BY_FIRST.get(words[0]!) ?? []), [words, word]])
}
export const EQUALS = new Set(
  'equals equal is are was comes come gives give giving makes make get gets got = -> means find finds finding calculate calculated calculating work works worked'.split(
    ' ',
  ),
)
export const FILL = new Set(
  "the a an of its their this that it you you've youve we we've weve then by can could be found out up from to as your if i they one have ve will unit units each every much many how which always just and also taken all on whole thing answer so".split(
    ' ',
  ),
)
export const SIGNS = table<Term>({
  '*': op('*'),
  '/': op('/'),
  '÷': op('/'),
  '+': op('+'),
  '-': op('-'),
  '^': op('^'),
  '(': op('('),
  ')': op(')'),
  '√': op('root'),
})
export const RAISED = table<number>({ '²': 2, '³': 3 })
export const PARTS_OF_ONE = table<number>({
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
})
