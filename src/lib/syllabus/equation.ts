import { NotationError } from './notation-error'

const ARROW = /<?[-–—]+>|<=>|[→⟶⇌⇄↔⟷⇋]|<-+/gu
const EQUALS = /=/g
// Anything that may stand between symbols and is none: figures, signs, brackets, powers.
const BETWEEN = /[\s\d.,½¼¾⅓⅔+\-−–×·⋅*/÷∕^()[\]{}√%⁰¹²³⁴-⁹⁺⁻π]/u
// Known without being explained: functions, Euler's e with a power, and the words for signs where an equation is
// written in words. `x` is times only between two factors, with spaces: `m x a`, not `2x + 1`.
const KNOWN =
  /(?:multiplied by|divided by|square root of|times|over|per|plus|minus|squared|cubed|sin|cos|tan|log|ln|exp|sqrt|pi|e(?=\^|[⁰¹²³⁴-⁹⁺⁻])|(?<=[\p{L}\d)]\s+)x(?=\s+[\p{L}\d(]))(?!\p{L})/uy
const LETTER = /[\p{L}\p{M}\d₀-₉_'′]/u
const SYMBOL = /[\p{L}\p{M}\d₀-₉_'′]+/uy
/** Far beyond any equation of a syllabus; keeps the search for side-by-side symbols short. */
const LONGEST = 500

/**
 * `chemical` where there is a reaction arrow (→, ->, ⇌, <->), `algebraic` otherwise. Light checks only:
 * exactly one arrow or one `=`, something on both sides, brackets that close.
 * @throws NotationError
 */
export function kindOfEquation(written: string): 'algebraic' | 'chemical' {
  if (written.length > LONGEST) {
    throw new NotationError(`An equation has at most ${LONGEST} characters.`, LONGEST)
  }
  const arrows = [...written.matchAll(ARROW)]
  const kind = arrows.length > 0 ? 'chemical' : 'algebraic'
  const signs = kind === 'chemical' ? arrows : [...written.matchAll(EQUALS)]
  const [sign, second] = signs
  if (!sign) throw new NotationError('One = (or a reaction arrow →) was expected.', written.length)
  const name = kind === 'chemical' ? 'reaction arrow' : '='
  if (second) throw new NotationError(`A second ${name}: exactly one was expected.`, second.index)
  const end = sign.index + sign[0].length
  if (written.slice(0, sign.index).trim() === '') {
    throw new NotationError(`Nothing stands before the ${name}.`, sign.index)
  }
  if (written.slice(end).trim() === '')
    throw new NotationError(`Nothing stands after the ${name}.`, end)
  const equals =
    kind === 'chemical' ? written.replace(sign[0], ' '.repeat(sign[0].length)).indexOf('=') : -1
  if (equals !== -1)
    throw new NotationError('Both an arrow and an =: one of them was expected.', equals)
  checkBrackets(written)
  return kind
}

function checkBrackets(written: string): void {
  const open: number[] = []
  for (let i = 0; i < written.length; i += 1) {
    if ('([{'.includes(written[i]!)) open.push(i)
    else if (')]}'.includes(written[i]!)) {
      const from = open.pop()
      if (from === undefined || '([{'.indexOf(written[from]!) !== ')]}'.indexOf(written[i]!)) {
        throw new NotationError('This bracket does not close one that was opened.', i)
      }
    }
  }
  const left = open.pop()
  if (left !== undefined) throw new NotationError('This bracket is never closed.', left)
}

export interface SymbolsRead {
  /** The explained symbols that occur. */
  readonly used: ReadonlySet<string>
  /** Symbols of the equation that are not explained, and where. */
  readonly unknown: readonly { readonly symbol: string; readonly offset: number }[]
}

/**
 * Reads an algebraic equation with the symbols that `where` explains; nothing between letters is a product, so
 * `V = IR` has I and R if these are explained. Case matters. Numbers, π and functions need no explanation.
 */
export function symbolsIn(written: string, explained: readonly string[]): SymbolsRead {
  // Longest first: where `mg` and `m` are both explained, `mg` is meant.
  const symbols = explained.filter((s) => s !== '').sort((a, b) => b.length - a.length)
  const used = new Set<string>()
  const unknown: { symbol: string; offset: number }[] = []
  for (let at = 0; at < written.length;) {
    const run = runAt(written, at, symbols)
    if (run) {
      run.symbols.forEach((symbol) => used.add(symbol))
      at = run.end
    } else if (matchAt(KNOWN, written, at)) at += matchAt(KNOWN, written, at)!.length
    else if (BETWEEN.test(written[at]!) || written[at] === '=') at += 1
    else {
      const symbol = matchAt(SYMBOL, written, at) ?? String.fromCodePoint(written.codePointAt(at)!)
      unknown.push({ symbol, offset: at })
      at += symbol.length
    }
  }
  return { used, unknown }
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at
  return pattern.exec(text)?.[0]
}

interface Run {
  readonly symbols: readonly string[]
  readonly end: number
}

/** Explained symbols side by side from `at` up to where no letter follows; undefined where they do not fit. */
function runAt(
  text: string,
  at: number,
  symbols: readonly string[],
  failed = new Set<number>(),
): Run | undefined {
  if (failed.has(at)) return undefined
  for (const symbol of symbols) {
    if (!text.startsWith(symbol, at)) continue
    const end = at + symbol.length
    if (end >= text.length || !LETTER.test(text[end]!)) return { symbols: [symbol], end }
    const rest = runAt(text, end, symbols, failed)
    if (rest) return { symbols: [symbol, ...rest.symbols], end: rest.end }
  }
  failed.add(at)
  return undefined
}
