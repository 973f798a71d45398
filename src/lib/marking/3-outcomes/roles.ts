import { assertionsOf, type Assertion } from '../1-statements/assertions'
import { readPage, type ReadPage } from '../1-statements/page'
import { Finder, type Hit } from '../2-ideas/find'
import type { ReadyPoint, ReadyTopic } from '../2-ideas/ready'
import type { Unit } from '../2-ideas/ready-idea'
import { isDirectional, knownPhraseAt, phraseKey } from '../words/relations'
import { isStopWord } from '../lexicon'
import { isVerb } from '../words/verbs'

/** What a thing is in an assertion: before or after the verb, or bound to by a preposition. */
type Role = string

const PREPOSITIONS = new Set(
  'into to from by because due than under over above below beneath at as onto through towards'.split(
    ' ',
  ),
)
const LIKE: Readonly<Record<string, string>> = {
  beneath: 'under',
  below: 'under',
  over: 'above',
  onto: 'to',
  towards: 'to',
}

/** No role: `A is B` has no doer. */
const NONE: Role = ''
const EQUATES = /^(?:is|are|was|were|be|means?|=|:|->|-|has|have|called|consists?)$/

interface Player {
  readonly unit: Unit
  readonly role: Role
  /** The assertion of the point's text that it is in. */
  readonly assertion: number
}

interface Roles {
  /** The content words of the point's text that play a role. */
  readonly players: readonly Player[]
  readonly finder: Finder
  /** Two of them play different roles in one assertion, so that they can be exchanged at all. */
  readonly exchangeable: boolean
}

const known = new WeakMap<ReadyPoint, Roles>()

/** The point's own text read like a page. */
export function rightText(topic: ReadyTopic, point: ReadyPoint): Finder {
  return rolesOf(topic, point).finder
}

function rolesOf(topic: ReadyTopic, point: ReadyPoint): Roles {
  const before = known.get(point)
  if (before) return before
  const page = readPage(point.point.text, topic.vocabulary)
  const finder = new Finder(page)
  const players: Player[] = []
  const seen = new Set<string>()
  assertionsOf(page)
    .flat()
    .forEach((assertion, a) => {
      for (let i = assertion.subject.from; i < assertion.body.to; i += 1) {
        const phrase = knownPhraseAt(page.keys, i)
        const keys = phrase ?? [page.keys[i]!]
        const key = phraseKey(keys)
        if (
          seen.has(key) ||
          keys.some((k) => !point.weights.has(k)) ||
          isDirectional(key) ||
          (!phrase && isVerb(page.tokens[i]!.text))
        )
          continue
        const role = roleAt(page, assertion, i)
        if (role === NONE) continue
        for (const k of [...keys, key]) seen.add(k)
        const unit = {
          phrase: key,
          keys,
          weight: 1,
          near: false,
          directional: false,
          exact: false,
        }
        players.push({ unit, role, assertion: a })
      }
    })
  const exchangeable = players.some((one) => players.some((two) => differs(one, two)))
  const made = { players, finder, exchangeable }
  known.set(point, made)
  return made
}

const differs = (one: Player, two: Player): boolean =>
  one.assertion === two.assertion && one.role !== two.role

/** How many things of the point stand in each statement of a page; undefined for a point without two that could be exchanged. */
export function thingsIn(
  topic: ReadyTopic,
  point: ReadyPoint,
  finder: Finder,
): Uint16Array | undefined {
  const { players, exchangeable } = rolesOf(topic, point)
  if (!exchangeable) return undefined
  const things = new Uint16Array(finder.page.statements.length)
  for (const { unit } of players) for (const s of finder.statementsWith(unit)) things[s]! += 1
  return things
}

/** Rule 10: two things of the point that stand in each other's roles in this assertion of the page, and not in their own as well; first the one that comes first. */
export function swappedRoles(
  topic: ReadyTopic,
  point: ReadyPoint,
  finder: Finder,
  assertion: Assertion,
): readonly [Hit, Hit] | undefined {
  const { players } = rolesOf(topic, point)
  const { page } = finder
  const stands = ({ sign, strength, from }: Hit) =>
    sign === 1 && strength >= 0.9 && from >= assertion.subject.from && from < assertion.body.to
  const there: (Player & { readonly hit: Hit })[] = []
  for (const player of players) {
    const hit = finder.hitsIn(player.unit, assertion.statement).find(stands)
    if (hit) there.push({ ...player, hit })
  }
  if (!there.some((one) => there.some((two) => differs(one, two)))) return undefined
  const placed = there.map((player) => ({
    ...player,
    said: roleAt(page, assertion, player.hit.from),
  }))
  const pairs = placed.flatMap((one, i) =>
    placed
      .slice(i + 1)
      .filter(
        (two) =>
          differs(one, two) &&
          one.said !== NONE &&
          two.said !== NONE &&
          one.hit.from !== two.hit.from,
      )
      .map((two) => [one, two] as const),
  )
  const straight = pairs.filter(([one, two]) => one.said === one.role && two.said === two.role)
  const swapped = pairs.find(
    ([one, two]) =>
      one.said === two.role &&
      two.said === one.role &&
      !straight.some((pair) => pair.includes(one) || pair.includes(two)),
  )
  const hits = swapped?.map(({ hit }) => hit).sort((a, b) => a.from - b.from)
  return hits && [hits[0]!, hits[1]!]
}

const RELATIVE = new Set(['that', 'which', 'who', 'whose', 'where'])

// `a rock that people cannot live on`: who does what in there is told of the rock, not of what follows.
function isRelative(page: ReadPage, { subject }: Assertion, i: number): boolean {
  for (let k = subject.from + 1; k <= i && k < subject.to; k += 1)
    if (RELATIVE.has(page.tokens[k]!.text)) return true
  return false
}

function roleAt(page: ReadPage, assertion: Assertion, i: number): Role {
  if (isRelative(page, assertion, i)) return NONE
  let described = false
  for (let k = i - 1; k >= Math.max(assertion.subject.from, i - 4); k -= 1) {
    const word = page.tokens[k]!.text
    if (PREPOSITIONS.has(word))
      return word === 'by' && passive(page, assertion) ? 'doer' : (LIKE[word] ?? word)
    if (page.tokens[k]!.kind === 'sign') break
    if (isStopWord(word)) continue
    // `because of the prevailing wind`: one word may describe it, a verb does not.
    if (described || isVerb(word) || k === assertion.body.from) break
    described = true
  }
  // `the wind makes the waves reach the beach`: it is the waves that reach it.
  if (
    CAUSES.test(page.tokens[assertion.body.from]!.text) &&
    i > assertion.body.from &&
    i <= assertion.body.from + 2
  )
    return NONE
  // `CO2 + H2O → glucose`: what goes in and what it turns into.
  const arrow = arrowIn(page, assertion)
  if (arrow !== undefined) return i < arrow ? 'done to' : 'into'
  if (
    !compares(page, assertion) &&
    EQUATES.test(page.tokens[assertion.body.from]!.text) &&
    !passive(page, assertion)
  )
    return NONE
  const before = i < assertion.subject.to
  if (passive(page, assertion)) return before ? 'done to' : 'after'
  return before ? 'doer' : 'done to'
}

function arrowIn(page: ReadPage, { subject, body }: Assertion): number | undefined {
  for (let i = subject.from; i < body.to; i += 1) if (page.tokens[i]!.text === '->') return i
  return undefined
}

function compares(page: ReadPage, { subject, body }: Assertion): boolean {
  for (let i = subject.from; i < body.to; i += 1) if (page.tokens[i]!.text === 'than') return true
  return false
}

const PARTICIPLE =
  /(?:ed|en|wn|ung|ept|elt|ade|aid|old|ught|ound|orn|ent|uilt)$|^(?:cut|done|fed|gone|heard|held|hit|led|lost|met|put|read|run|sent|set|shed|shot|shut|split|spun|stuck|struck|swum|won)$/
const CAUSES =
  /^(?:makes?|made|making|causes?|caused|lets?|forces?|forced|allows?|allowed|helps?|helped|gets?|got|drives?|drove|pushe?s?|pushed)$/
const BE = new Set(['is', 'are', 'was', 'were', 'be', 'been', 'being', 'get', 'gets', 'got'])

function passive(page: ReadPage, { body }: Assertion): boolean {
  for (let i = body.from; i < Math.min(body.to, body.from + 3); i += 1) {
    if (!BE.has(page.tokens[i]!.text)) continue
    for (let k = i + 1; k < Math.min(body.to, i + 3); k += 1) {
      if (PARTICIPLE.test(page.tokens[k]!.text)) return true
    }
  }
  return false
}
