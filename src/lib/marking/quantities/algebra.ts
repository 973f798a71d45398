/**
 * Just enough algebra to tell whether two equations say the same: an expression tree over named quantities,
 * and a numerical test. Two equations are the same statement where every assignment that satisfies one satisfies
 * the other; that is tried at fixed, irregular values, so that the same dump always gets the same mark.
 */

export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'symbol'; readonly name: string }
  | {
      readonly kind: 'binary'
      readonly op: '+' | '-' | '*' | '/' | '^'
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly kind: 'root'; readonly of: Expression }

export interface Relation {
  readonly left: Expression
  readonly right: Expression
}

/** A piece of an equation as text was read: a quantity, a number, an operator or a bracket. */
export type Term =
  | { readonly kind: 'symbol'; readonly name: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'op'; readonly op: '+' | '-' | '*' | '/' | '^' | '(' | ')' | 'root' }

/** Reads terms by the usual precedence; factors side by side are multiplied. Undefined where it is no expression. */
export function expressionOf(terms: readonly Term[]): Expression | undefined {
  let at = 0
  const isOp = (...ops: string[]) => {
    const term = terms[at]
    return term?.kind === 'op' && ops.includes(term.op)
  }
  const opHere = () => (terms[at] as Extract<Term, { kind: 'op' }>).op as '+' | '-' | '*' | '/'

  function sum(): Expression | undefined {
    let left = isOp('-') ? negated() : product()
    while (left && isOp('+', '-')) {
      const op = opHere()
      at += 1
      const right = product()
      left = right && { kind: 'binary', op, left, right }
    }
    return left
  }
  function negated(): Expression | undefined {
    at += 1
    const of = product()
    return of && { kind: 'binary', op: '-', left: { kind: 'number', value: 0 }, right: of }
  }
  function product(): Expression | undefined {
    let left = power()
    while (left && at < terms.length && !isOp('+', '-', ')')) {
      const op = isOp('*', '/') ? opHere() : '*'
      if (isOp('*', '/')) at += 1
      const right = power()
      left = right && { kind: 'binary', op, left, right }
    }
    return left
  }
  function power(): Expression | undefined {
    const base = atom()
    if (!base || !isOp('^')) return base
    at += 1
    const exponent = atom()
    return exponent && { kind: 'binary', op: '^', left: base, right: exponent }
  }
  function atom(): Expression | undefined {
    const term = terms[at]
    if (!term) return undefined
    at += 1
    if (term.kind === 'number') return { kind: 'number', value: term.value }
    if (term.kind === 'symbol') return { kind: 'symbol', name: term.name }
    if (term.op === 'root') {
      const of = atom()
      return of && { kind: 'root', of }
    }
    if (term.op !== '(') return undefined
    const inside = sum()
    if (!isOp(')')) return undefined
    at += 1
    return inside
  }

  const whole = sum()
  return at === terms.length ? whole : undefined
}

export function symbolsOf(expression: Expression, into = new Set<string>()): Set<string> {
  if (expression.kind === 'symbol') into.add(expression.name)
  else if (expression.kind === 'binary') {
    symbolsOf(expression.left, into)
    symbolsOf(expression.right, into)
  } else if (expression.kind === 'root') symbolsOf(expression.of, into)
  return into
}

export function symbolsIn(relation: Relation): Set<string> {
  return symbolsOf(relation.right, symbolsOf(relation.left))
}

type Values = Readonly<Record<string, number>>

function valueOf(e: Expression, values: Values): number {
  switch (e.kind) {
    case 'number':
      return e.value
    case 'symbol':
      return values[e.name] ?? NaN
    case 'root':
      return Math.sqrt(valueOf(e.of, values))
    case 'binary': {
      const left = valueOf(e.left, values)
      const right = valueOf(e.right, values)
      switch (e.op) {
        case '+':
          return left + right
        case '-':
          return left - right
        case '*':
          return left * right
        case '/':
          return left / right
        case '^':
          return left ** right
      }
    }
  }
}

const TRIALS = [
  [1.37, 2.91, 0.83, 4.19, 1.73, 3.07, 0.59, 2.23],
  [3.61, 0.71, 1.93, 1.13, 2.69, 0.47, 4.43, 1.51],
  [0.67, 1.79, 3.23, 2.47, 0.89, 1.31, 2.17, 3.83],
]

/** Does `one` say the same as `reference`, which is solved for the quantity on its left? Both over the same symbols. */
export function sameRelation(one: Relation, reference: Relation): boolean {
  const names = [...symbolsIn(reference)].sort()
  const given = [...symbolsIn(one)].sort()
  if (names.length === 0 || names.join() !== given.join()) return false
  let told = false
  for (const trial of TRIALS) {
    const values: Record<string, number> = {}
    names.forEach((name, i) => (values[name] = trial[i % trial.length]!))
    const solved = solve(reference, names, values)
    if (!solved) continue
    const left = valueOf(one.left, solved)
    const right = valueOf(one.right, solved)
    if (!Number.isFinite(left) || !Number.isFinite(right) || !near(left, right)) return false
    // It must also fail where the reference fails, or `x - x = 0` would be every equation.
    const off = { ...solved, [names[0]!]: solved[names[0]!]! * 1.7 + 0.3 }
    if (near(valueOf(one.left, off), valueOf(one.right, off))) return false
    told = true
  }
  return told
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))
}

// References are written `v = f × λ`: one side is a single quantity, which follows from the others.
function solve(reference: Relation, names: readonly string[], values: Values): Values | undefined {
  for (const [alone, rest] of [
    [reference.left, reference.right],
    [reference.right, reference.left],
  ] as const) {
    if (alone.kind !== 'symbol' || symbolsOf(rest).has(alone.name)) continue
    const value = valueOf(rest, values)
    return Number.isFinite(value) ? { ...values, [alone.name]: value } : undefined
  }
  return bisected(reference, names, values)
}

// Neither side stands alone (½mv² = mgh): find the first name's value between bounds, by bisection.
function bisected(
  reference: Relation,
  names: readonly string[],
  values: Values,
): Values | undefined {
  const name = names[0]!
  const gap = (x: number) => {
    const at = { ...values, [name]: x }
    return valueOf(reference.left, at) - valueOf(reference.right, at)
  }
  let low = 1e-3
  let high = 1e3
  if (!(gap(low) * gap(high) < 0)) return undefined
  for (let i = 0; i < 200; i += 1) {
    const middle = (low + high) / 2
    if (gap(low) * gap(middle) <= 0) high = middle
    else low = middle
  }
  return { ...values, [name]: (low + high) / 2 }
}
