import type { Token } from '../1-statements/tokens'
import { isDirectionWord, isFiller, isNegation } from '../lexicon'
import { keyOf } from '../words/keys'
import { GOES, isContent } from './draft-words'
import { PARTING } from './draft-chunks'

/** A chunk in the mark scheme's notation, without what the title gives away and without filler; '' where nothing is left. */
export function written(chunk: readonly Token[], given: ReadonlySet<string>): string {
  const own = chunk.filter((token) => isContent(token) && !given.has(keyOf(token.text)))
  // `and is not used up in it`: what is denied is the point, however plain its words.
  const denial = chunk.findIndex((token) => isNegation(token.text))
  if (own.length === 0 && denial >= 0)
    return chunk
      .slice(denial, denial + 3)
      .filter((token) => token.kind === 'word' && !PARTING.has(token.text))
      .map((token) => token.text)
      .join(' ')
  if (own.length === 0 || (own.length === 1 && EMPTY.has(own[0]!.text) && denial < 0)) return ''
  // `quantity demanded` is one thing, although the title gives `demand` away.
  const besideOwn = (i: number) => own.includes(chunk[i - 1]!) || own.includes(chunk[i + 1]!)
  const kept = chunk.filter(
    (token, i) =>
      isNegation(token.text) ||
      isDirectionWord(token.text) ||
      (isFiller(token.text) && PARTICLES.has(chunk[i + 1]?.text ?? '')) ||
      (isContent(token) && (!given.has(keyOf(token.text)) || own.length < 2 || besideOwn(i))),
  )
  while (
    kept.length > 1 &&
    isBinder(kept[kept.length - 1]!) &&
    !LASTS.has(kept[kept.length - 1]!.text)
  )
    kept.pop()
  while (kept.length > 1 && isBinder(kept[0]!) && !GOES.has(kept[0]!.text)) kept.shift()
  const alternatives = alternativesIn(chunk)
  const words = kept.map((token) => token.text)
  if (!alternatives) return words.join(' ')
  const [one, two] = alternatives
  return [words.filter((w) => w !== one && w !== two).join(' '), `${one} / ${two}`]
    .filter(Boolean)
    .join(' + ')
}

/** `used up`, `given off`: the verb is plain and the two are not. */
const PARTICLES = new Set('up off out away'.split(' '))
/** `the land behind it`: of the others nothing is left without what they go with. */
const LASTS = new Set('up down out away off back over together'.split(' '))
/** Alone they tell nothing of the point. */
const EMPTY = new Set(
  'each anyone everyone someone most many place come comes happens occurs shows show shown suggests suggested found'.split(
    ' ',
  ),
)

const isBinder = (token: Token) => isDirectionWord(token.text)
function alternativesIn(chunk: readonly Token[]): readonly [string, string] | undefined {
  const i = chunk.findIndex((token) => token.text === 'or')
  const [one, two] = [chunk[i - 1], chunk[i + 1]]
  if (i < 1 || !one || !two || !isContent(one) || !isContent(two)) return undefined
  return [one.text, two.text]
}
