import type { Term } from './algebra'
import { num, op, type Piece, type Prefix } from './equation-words'

/** Stretches of mathematics, parted where the student says something else. */
export function* runsOf(pieces: readonly Piece[]): Generator<Piece[]> {
  let run: Piece[] = []
  for (const [i, piece] of pieces.entries()) {
    // "The time a download needs is …": a few words between a quantity and the equals sign only describe it.
    const next = pieces.slice(i, i + 4).find((p) => p.is !== 'gap' && p.is !== 'fill')
    const before = [...run].reverse().find((p) => p.is !== 'gap' && p.is !== 'fill')
    const named = before?.is === 'term' && before.term.kind === 'symbol'
    const describes =
      named &&
      (next?.is === 'equals' ||
        (next?.is === 'term' && next.term.kind === 'op' && next.term.op === '/'))
    if (piece.is !== 'gap' || describes) {
      run.push(piece)
      continue
    }
    if (run.length > 2) yield run
    run = []
  }
  if (run.length > 2) yield run
}

// The sides of `v = d / t = 10 / 2`. Where a rule is told (`to find speed, divide distance by time`), the prefix begins a side.
export function sidesOf(run: readonly Piece[]): Piece[][] {
  const sides: Piece[][] = [[]]
  const hasEquals = run.some((piece) => piece.is === 'equals')
  for (const piece of run) {
    const side = sides[sides.length - 1]!
    if (piece.is === 'equals') {
      if (side.some((p) => p.is === 'term' || p.is === 'prefix')) sides.push([])
    } else if (
      piece.is === 'prefix' &&
      PARTING.has(piece.word) &&
      side.some((p) => p.is === 'term')
    ) {
      if (!hasEquals || endsOperand(side)) sides.push([piece])
      else side.push(piece)
    } else side.push(piece)
  }
  return sides.map(trimmedSide).filter((side) => side.some((p) => p.is === 'term'))
}

const PARTING = new Set<Prefix>([
  'divide',
  'multiply',
  'product',
  'ratio',
  'sum',
  'difference',
  'subtract',
])

function endsOperand(side: readonly Piece[]): boolean {
  const last = side[side.length - 1]
  return last?.is !== 'term' || last.term.kind !== 'op'
}

// Leading and trailing filler is no part of what is quoted.
export function trimmedSide(side: Piece[]): Piece[] {
  const solid = (p: Piece) => p.is === 'term' || p.is === 'prefix'
  const first = side.findIndex(solid)
  const last = side.length - 1 - [...side].reverse().findIndex(solid)
  return first < 0 ? [] : side.slice(first, last + 1)
}

const JOINERS: Readonly<
  Record<Prefix, { by: Piece['is']; op: '/' | '*' | '+' | '-'; swap?: boolean } | undefined>
> = {
  divide: { by: 'by', op: '/' },
  multiply: { by: 'by', op: '*' },
  product: { by: 'and', op: '*' },
  ratio: { by: 'to', op: '/' },
  sum: { by: 'and', op: '+' },
  difference: { by: 'and', op: '-' },
  subtract: { by: 'from', op: '-', swap: true },
  root: undefined,
  twice: undefined,
  half: undefined,
}

/** Infix terms of one side: `divide d by t` becomes d / t; the same quantity named twice over is one. */
export function arranged(side: readonly Piece[]): Term[] {
  const prefix = side.findIndex((p) => p.is === 'prefix' && JOINERS[p.word])
  if (prefix >= 0) {
    const joiner = JOINERS[(side[prefix] as Extract<Piece, { is: 'prefix' }>).word]!
    const rest = side.slice(prefix + 1)
    const by = rest.findIndex((p) => p.is === joiner.by || (joiner.by === 'by' && p.is === 'and'))
    if (by > 0) {
      const one = bracketed(arranged(rest.slice(0, by)))
      const two = bracketed(arranged(rest.slice(by + 1)))
      const before = arranged(side.slice(0, prefix))
      return joiner.swap
        ? [...before, ...two, op(joiner.op), ...one]
        : [...before, ...one, op(joiner.op), ...two]
    }
  }
  const terms: Term[] = []
  for (const [i, piece] of side.entries()) {
    // `half x mass`: the sign is there already.
    const signed = side.slice(i + 1).find((p) => p.is === 'term' || p.is === 'prefix')
    const times = signed?.is === 'term' && signed.term.kind === 'op' ? [] : [op('*')]
    if (piece.is === 'prefix') {
      if (piece.word === 'root') terms.push(op('root'))
      else if (piece.word === 'twice') terms.push(num(2), ...times)
      else if (piece.word === 'half') terms.push(num(0.5), ...times)
      continue
    }
    if (piece.is !== 'term') continue
    const last = terms[terms.length - 1]
    const again =
      last?.kind === 'symbol' && piece.term.kind === 'symbol' && last.name === piece.term.name
    if (!again) terms.push(piece.term)
  }
  return terms
}

function bracketed(terms: readonly Term[]): Term[] {
  return [op('('), ...terms, op(')')]
}
