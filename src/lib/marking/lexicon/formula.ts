import { compounds, elements } from './formulae'
import { once } from './once'
import { rowsOf } from './rows'

const byName = once((): ReadonlyMap<string, string> => {
  const found = new Map<string, string>()
  for (const row of [...rowsOf(elements), ...rowsOf(compounds)]) {
    const [names = '', formula = ''] = row.split(' = ').map((part) => part.trim())
    for (const name of names.split(',')) {
      const known = name.trim().toLowerCase()
      if (known && !found.has(known)) found.set(known, formula)
    }
  }
  return found
})

/** The names that are listed, in lower case. */
export const substanceNames = (): readonly string[] => [...byName().keys()]

/** Gases that stand as molecules of two atoms in a reaction: the element's symbol alone would be one atom. */
const PAIRS = new Set(['H', 'N', 'O', 'F', 'Cl', 'Br', 'I'])

/** The formula of an element, compound or ion in a reaction (`oxygen` is O2); undefined for a name that is not listed. */
export function formulaNamed(name: string): string | undefined {
  const formula = byName().get(name) ?? byName().get(name.replace(/s$/, ''))
  return formula && PAIRS.has(formula) ? `${formula}2` : formula
}

/** Names and formulae that stand for the same substance, for matching words: `[['carbon dioxide', 'CO2'], …]`. */
export function formulaRows(): string[][] {
  const molecules = rowsOf(elements)
    .map((row) => row.split(' = ').map((part) => part.trim()))
    .filter(([, symbol]) => symbol !== undefined && PAIRS.has(symbol))
    .map(([name, symbol]) => [name!, `${symbol}2`])
  const named = rowsOf(compounds).map((row) => {
    const [names = '', formula = ''] = row.split(' = ').map((part) => part.trim())
    return [...names.split(',').map((name) => name.trim()), formula]
  })
  return [...molecules, ...named]
}
