import type { Token } from './tokens'

/**
 * Shorthand that only its place makes plain: `min energy` is the minimum and `5 min` are minutes, `per sec` is each second, `no. of
 * waves` their number, `// to the beach` parallel to it, `x2` doubled. `undefined` for every other token.
 */
export function readInPlace(tokens: readonly Token[], i: number): string | undefined {
  const token = tokens[i]!
  const [before, next] = [tokens[i - 1], tokens[i + 1]]
  switch (token.text) {
    case 'min':
      if (before?.kind === 'number' || PER.has(before?.text ?? '')) return 'minutes'
      return next?.kind === 'word' ? 'minimum' : undefined
    case 'sec':
      return before?.kind === 'number' || PER.has(before?.text ?? '') ? 'second' : undefined
    case 'no':
    case 'nos': {
      const after = next?.text === '.' ? tokens[i + 2] : next
      return after?.text === 'of' ? 'number' : undefined
    }
    case '/':
      return next?.text === '/' && !next.apart && before?.text !== ':' && before?.text !== '/'
        ? 'parallel'
        : undefined
    case 'x2':
      return 'doubled'
    case 'x3':
      return 'tripled'
    default:
      return undefined
  }
}

const PER = new Set(['per', 'each', 'every', 'a', 'one', '/'])
