import type { Span } from '../types'

/** One side of a reaction: how many of each species, by a plain lower-case formula with its charge. */
export type Side = ReadonlyMap<string, number>

export interface Reaction {
  readonly from: Side
  readonly to: Side
  /** Some coefficient is written, or all are one: symbols. False where only names are given. */
  readonly counted: boolean
}

const SUB = '₀₁₂₃₄₅₆₇₈₉'
const SUPER = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const SIGN = /(?:<?[-=–—]{1,3}>|→|⟶|⇒|⇌|⇋|↔|=)\s*/u
const VERB =
  /\b(?:reacts?\s+to\s+(?:give|form|make|produce)|gives?|forms?|makes?|produces?|becomes?|goes\s+to)\b\s*/iu
const STATE = /\((?:s|l|g|aq)\)|\(?\s*\+\s*(?:energy|heat|light)\s*\)?/giu
// Reads one species: how many, the formula, and its charge.
const SPECIES =
  /^(\d+)?\s*((?:[A-Z][a-z]?\d*|\((?:[A-Z][a-z]?\d*)+\)\d*|\[(?:[A-Z][a-z]?\d*)+\]\d*)+|e)\s*(?:\^?\{?(\d*[+-]+|[+-]\d+)\}?)?$/

/** Sub- and superscripts as plain signs: `Ca²⁺` is `Ca^2+`. */
export function flat(text: string): string {
  return text
    .replace(/[₀-₉]/g, (c) => String(SUB.indexOf(c)))
    .replace(
      /[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+/g,
      (run) =>
        `^${[...run].map((c) => (c === '⁺' ? '+' : c === '⁻' ? '-' : String(SUPER.indexOf(c)))).join('')}`,
    )
    .replace(/[−–]/g, '-')
}

/** The names and formulae a reaction may use: a lower-case name to its formula. */
export type NameToFormula = (name: string) => string | undefined

/** Is there a sign or a verb in the text that could stand between the two sides of a reaction? */
export const mayReact = (text: string): boolean => SIGN.test(text) || VERB.test(text)

/**
 * The reaction written in `text`, and where; undefined where there is none. Formulae may be typed without capitals when
 * `expected` lists the species in question. Names count through `named`.
 */
export function reactionIn(
  text: string,
  expected: ReadonlySet<string>,
  named: NameToFormula,
): (Reaction & { readonly span: Span }) | undefined {
  for (const arrow of [SIGN.exec(text), VERB.exec(text)]) {
    if (!arrow) continue
    const after = arrow.index + arrow[0].length
    const left = longest(
      words(lastList(text.slice(0, arrow.index))),
      (all, cut) => all.slice(cut),
      expected,
      named,
    )
    const right = longest(
      words(firstList(text.slice(after))),
      (all, cut) => all.slice(0, all.length - cut),
      expected,
      named,
    )
    if (!left || !right) continue
    const before = text.slice(0, arrow.index).trimEnd()
    const start = before.length - left.text.length
    const end = text.indexOf(right.text, after) + right.text.length
    return {
      from: left.side,
      to: right.side,
      counted: left.counted && right.counted,
      span: { start, end },
    }
  }
  return undefined
}

function words(list: string): string[] {
  return list.trim().split(/(?<=\s)(?=\S)/)
}

/** The longest end (or beginning) of a list that is all species: prose may stand before and behind it. */
function longest(
  all: readonly string[],
  cutOf: (all: readonly string[], cut: number) => readonly string[],
  expected: ReadonlySet<string>,
  named: NameToFormula,
) {
  for (let cut = 0; cut < all.length && cut < 40; cut += 1) {
    const text = cutOf(all, cut).join('').trim()
    const read = sideOf(text, expected, named)
    if (read) return { ...read, text }
  }
  return undefined
}

// The list of species ends where prose begins: at a colon, comma, semicolon or full stop followed by space.
function lastList(text: string): string {
  return /[^:;,]*$/.exec(text)![0].trimStart()
}
function firstList(text: string): string {
  return /^[^:;,]*?(?=[:;,]|\.(?:\s|$)|$)/.exec(text)![0].trimEnd()
}

// The plus between species, or the plus of a charge? First as it is written with care, then as it comes.
const PLUS: readonly RegExp[] = [
  /\s+\+\s*|\+(?=\d*[A-Z(e])|\s+(?:and|plus|with)\s+/u,
  /\s+\+\s*|\s*\+\s+|\+(?=\s*\d*\s*[A-Z(e])|\s+(?:and|plus|with)\s+/u,
]

function sideOf(text: string, expected: ReadonlySet<string>, named: NameToFormula) {
  const clean = flat(text.replace(STATE, ' ')).trim()
  const reads = PLUS.map((plus) =>
    speciesIn(clean.split(plus).filter(Boolean), expected, named),
  ).filter((read) => read !== undefined)
  return (
    reads.find(({ side }) => [...side.keys()].every((formula) => expected.has(formula))) ?? reads[0]
  )
}

function speciesIn(parts: readonly string[], expected: ReadonlySet<string>, named: NameToFormula) {
  const side = new Map<string, number>()
  let counted = true
  for (const part of parts) {
    const read = speciesOf(part.trim(), expected, named)
    if (!read) return undefined
    counted &&= read.counted
    side.set(read.formula, (side.get(read.formula) ?? 0) + read.count)
  }
  return side.size === 0 ? undefined : { side, counted }
}

function speciesOf(part: string, expected: ReadonlySet<string>, named: NameToFormula) {
  const hit = SPECIES.exec(part.replace(/\s+(?=\^?\d*[+-]$)/, ''))
  if (hit) {
    return {
      formula: ionOf(hit[2]!, hit[3], expected),
      count: hit[1] ? Number(hit[1]) : 1,
      counted: true,
    }
  }
  const words = part.toLowerCase().replace(/^(?:the|a|an)\s+/, '')
  const loose = /^(\d+)?\s*([a-z(][a-z0-9()]*)\s*(?:\^?(\d*[+-]+|[+-]\d+))?$/.exec(words)
  if (loose && expected.has(plainFormula(loose[2]!, loose[3]))) {
    return {
      formula: plainFormula(loose[2]!, loose[3]),
      count: loose[1] ? Number(loose[1]) : 1,
      counted: true,
    }
  }
  const name = /^(?:(\d+)\s+)?(.+)$/.exec(words)!
  const formula = named(name[2]!.trim())
  return formula
    ? {
        formula: speciesNamed(formula),
        count: Number(name[1] ?? 1),
        counted: false,
      }
    : undefined
}

/** The species that a formula of the lexicon stands for. */
export const speciesNamed = (formula: string): string => plainFormula(...split(flat(formula)))

function split(formula: string): [string, string | undefined] {
  const hit = /^(.*?)(?:\^?(\d*[+-]+))?$/.exec(formula.replace('^', '\u0000'))!
  const [body = '', charge] = hit[0].split('\u0000')
  return charge === undefined ? [hit[1]!, hit[2]] : [body, charge]
}

// `Cu2+` is read as Cu²⁺, unless the reaction in question has Cu₂⁺; one element with a number and a bare sign is an ion.
function ionOf(formula: string, charge: string | undefined, expected: ReadonlySet<string>): string {
  const plain = plainFormula(formula, charge)
  const digits = /^(.*?[A-Za-z)\]])(\d)$/.exec(formula)
  if (!digits || !charge || /\d/.test(charge) || expected.has(plain)) return plain
  const ion = plainFormula(digits[1]!, digits[2]! + charge)
  return expected.has(ion) || /^[A-Z][a-z]?$/.test(digits[1]!) ? ion : plain
}

function plainFormula(formula: string, charge: string | undefined): string {
  return formula.toLowerCase() + (charge ? `^${chargeOf(charge)}` : '')
}

// 2+, +2, ++ and + are written alike.
function chargeOf(charge: string): string {
  const sign = charge.includes('-') ? '-' : '+'
  const digits = charge.replace(/[^\d]/g, '')
  const size = digits === '' ? charge.length : Number(digits)
  return `${size === 1 ? '' : size}${sign}`
}

export type ReactionJudgement = 'same' | 'wrong' | 'other'

/**
 * Same species and the same numbers or a multiple of them? A reaction in names has no numbers to be wrong. It is a wrong form of the
 * reference, and not some other reaction, where one side or the whole has the same species.
 */
export function compareReactions(one: Reaction, reference: Reaction): ReactionJudgement {
  const from = sameSpecies(one.from, reference.from)
  const to = sameSpecies(one.to, reference.to)
  if (from && to) return !one.counted || inProportion(one, reference) ? 'same' : 'wrong'
  const whole = ({ from: a, to: b }: Reaction): Side => new Map([...a, ...b])
  return from || to || sameSpecies(whole(one), whole(reference)) ? 'wrong' : 'other'
}

function inProportion(one: Reaction, reference: Reaction): boolean {
  const ratios = [...ratiosOf(one.from, reference.from), ...ratiosOf(one.to, reference.to)]
  return ratios.every((ratio) => Math.abs(ratio - ratios[0]!) < 1e-9)
}

function sameSpecies(one: Side, two: Side): boolean {
  return one.size === two.size && [...one.keys()].every((formula) => two.has(formula))
}

function ratiosOf(one: Side, two: Side): number[] {
  return [...one].map(([formula, count]) => count / two.get(formula)!)
}
