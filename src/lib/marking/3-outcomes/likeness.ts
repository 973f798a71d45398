import type { ReadPage } from '../1-statements/page'
import { contentKeysOf } from '../2-ideas/ready'
import { isDirectionWord, isNegation, isStopWord } from '../lexicon'
import { rarityOf } from '../lexicon/rarity'
import { tokenise } from '../1-statements/tokens'
import { relatedTo } from '../words/relations'
import { keyOfToken } from '../words/phrases'

/** A text that something is compared with: a point, a reference answer, an accepted wording. */
export interface Reference {
  readonly keys: readonly string[]
  readonly own: ReadonlySet<string>
  readonly weights: ReadonlyMap<string, number>
  readonly directions: ReadonlySet<string>
  readonly denials: number
  readonly grams: ReadonlySet<string>
  /** Keys that the title or the question gives away. */
  readonly given: ReadonlySet<string>
}

/** What a word of the title still counts for: given away, but it must be there too. */
const GIVEN = 0.25

export function referenceOf(text: string, given: ReadonlySet<string>): Reference {
  const keys = contentKeysOf(text)
  const tokens = tokenise(text)
  return {
    keys,
    own: new Set(keys),
    weights: new Map(keys.map((key) => [key, rarityOf(key) * (given.has(key) ? GIVEN : 1)])),
    directions: new Set(tokens.filter((t) => isDirectionWord(t.text)).map(keyOfToken)),
    denials: tokens.filter((t) => isNegation(t.text)).length,
    grams: gramsOf(keys),
    given,
  }
}

/**
 * What tells whether tokens `from`..`to` of a page say the reference: one number for each name of `EVIDENCE`. Every number is 0 to 1 or
 * nearly so.
 */
export const EVIDENCE = [
  'cover',
  'coverOwn',
  'coverPlain',
  'lightest',
  'heaviest',
  'precise',
  'preciseOwn',
  'extra',
  'pairs',
  'order',
  'grams',
  'opposed',
  'denialOdd',
  'denialOddCovered',
  'directions',
  'related',
  'short',
  'long',
  'referenceLong',
  'ratio',
  'given',
  'marked',
  'clashes',
  'coverSquared',
  'coverOwnSquared',
  'gramsSquared',
  'nothingOwn',
] as const

export function evidence(
  reference: Reference,
  page: ReadPage,
  from: number,
  to: number,
  marker: { readonly cover: number; readonly clashes: boolean },
): number[] {
  const found = new Map<string, number>()
  const opposed = new Set<string>()
  const used = new Uint8Array(to - from)
  let related = 0
  const whole = { got: 0, all: 0 }
  const own = { got: 0, all: 0 }
  const plain = { got: 0, all: 0 }
  let missing = 0
  let heaviest = 0
  let opposedWeight = 0
  for (const key of reference.own) {
    const weight = reference.weights.get(key)!
    let strength = strengthIn(page, key, from, to, used)
    if (strength < 1) {
      for (const { keys, sign, strength: sure } of relatedTo(key)) {
        const there = keys.every(
          (k) => strengthIn(page, k, from, to, sign > 0 ? used : undefined) > 0,
        )
        if (!there) continue
        if (sign < 0) opposed.add(key)
        else if (sure > strength) {
          strength = sure
          related += 1
        }
      }
    }
    if (strength === 0 && opposed.has(key)) opposedWeight += weight
    found.set(key, strength)
    whole.got += weight * strength
    whole.all += weight
    if (!reference.given.has(key)) {
      own.got += weight * strength
      own.all += weight
    }
    plain.got += strength
    plain.all += 1
    if (strength === 0) missing = Math.max(missing, weight)
    else heaviest = Math.max(heaviest, weight)
  }
  const cover = share(whole.got, whole.all)
  const coverOwn = own.all > 0 ? own.got / own.all : cover
  const said = answerIn(reference, page, from, to, used)
  const pairs = pairsFound(reference, page, from, to)
  const grams = dice(reference.grams, gramsOf(said.keys))
  const denialOdd = said.denials % 2 === reference.denials % 2 ? 0 : 1
  const gotDirections = [...reference.directions].filter(
    (key) => strengthIn(page, key, from, to) > 0,
  ).length
  const clashes = marker.clashes ? 1 : 0
  return [
    cover,
    coverOwn,
    share(plain.got, plain.all),
    missing,
    heaviest,
    said.precise,
    said.preciseOwn,
    Math.min(1, said.extra / 5),
    pairs,
    orderOf(reference.keys, said.keys),
    grams,
    share(opposedWeight, whole.all),
    denialOdd,
    denialOdd * cover,
    reference.directions.size === 0 ? 0.5 : gotDirections / reference.directions.size,
    Math.min(1, related / 3),
    said.keys.length <= 2 ? 1 : 0,
    Math.min(1, Math.log2(1 + said.keys.length) / 5),
    Math.min(1, Math.log2(1 + reference.keys.length) / 5),
    Math.min(2, said.keys.length / Math.max(1, reference.keys.length)) / 2,
    said.given,
    marker.cover,
    clashes,
    cover * cover,
    coverOwn * coverOwn,
    grams * grams,
    own.got === 0 ? 1 : 0,
  ]
}

function strengthIn(page: ReadPage, key: string, from: number, to: number, used?: Uint8Array) {
  let best = 0
  for (const posting of page.postings.get(key) ?? []) {
    if (posting.from < from || posting.to > to || page.struck[posting.from] === 2) continue
    if (posting.strength > best) best = posting.strength
    used?.fill(1, posting.from - from, posting.to - from)
  }
  return best
}

interface Said {
  readonly keys: readonly string[]
  readonly precise: number
  readonly preciseOwn: number
  readonly extra: number
  readonly denials: number
  readonly given: number
}

function answerIn(
  reference: Reference,
  page: ReadPage,
  from: number,
  to: number,
  used: Uint8Array,
): Said {
  const keys: string[] = []
  let denials = 0
  let [got, all, ownGot, ownAll, extra, given] = [0, 0, 0, 0, 0, 0]
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'word' && isNegation(token.text)) denials += 1
    if (token.kind !== 'word' && token.kind !== 'number') continue
    if (isStopWord(token.text) || isDirectionWord(token.text)) continue
    const key = page.keys[i]!
    const weight = rarityOf(key)
    const isGiven = reference.given.has(key)
    keys.push(key)
    all += weight
    if (isGiven) given += 1
    else ownAll += weight
    if (used[i - from]) {
      got += weight
      if (!isGiven) ownGot += weight
    } else if (!isGiven) extra += weight
  }
  return {
    keys,
    denials,
    extra,
    precise: share(got, all),
    preciseOwn: share(ownGot, ownAll),
    given: share(given, keys.length),
  }
}

/** The share of the reference's neighbouring words that stand near one another here too, in their order. */
function pairsFound({ keys, given }: Reference, page: ReadPage, from: number, to: number): number {
  let [got, all] = [0, 0]
  for (let i = 0; i + 1 < keys.length; i += 1) {
    const [one, two] = [keys[i]!, keys[i + 1]!]
    if (one === two) continue
    const weight = given.has(one) && given.has(two) ? GIVEN : 1
    all += weight
    const near = (page.postings.get(one) ?? []).some(
      (a) =>
        a.from >= from &&
        a.to <= to &&
        (page.postings.get(two) ?? []).some(
          (b) => b.from >= a.to && b.from - a.to <= 4 && b.to <= to,
        ),
    )
    if (near) got += weight
  }
  return share(got, all)
}

/** The longest run of the reference's words that come in the same order, as a share of them. */
function orderOf(one: readonly string[], two: readonly string[]): number {
  const most = 60
  const [a, b] = [one.slice(0, most), two.slice(0, most)]
  let before = new Uint8Array(b.length + 1)
  for (const key of a) {
    const row = new Uint8Array(b.length + 1)
    for (let j = 1; j <= b.length; j += 1)
      row[j] = b[j - 1] === key ? before[j - 1]! + 1 : Math.max(before[j]!, row[j - 1]!)
    before = row
  }
  return share(before[b.length]!, a.length)
}

function gramsOf(keys: readonly string[]): Set<string> {
  const grams = new Set<string>()
  for (const key of keys) {
    const padded = ` ${key} `
    for (let i = 0; i + 3 <= padded.length; i += 1) grams.add(padded.slice(i, i + 3))
  }
  return grams
}

function dice(one: ReadonlySet<string>, two: ReadonlySet<string>): number {
  let both = 0
  for (const gram of one) if (two.has(gram)) both += 1
  return share(2 * both, one.size + two.size)
}

const share = (part: number, whole: number): number => (whole === 0 ? 0 : part / whole)
