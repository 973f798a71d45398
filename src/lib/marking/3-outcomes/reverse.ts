import type { ReadPage } from '../1-statements/page'

const THE_THE =
  /\bthe\s+(?:more|less|fewer|further|\w+er)\b.*\bthe\s+(?:more|less|fewer|further|\w+er)\b/isu
const CONDITION = /\b(?:when|whenever|if|as|with|than)\b|[↑↓⇧⇩]|->|→|⇒/iu

/**
 * Rule 9: can the statement be a reverse argument? Only a relation can be turned round ("the lower the price, the more is demanded");
 * two plain facts turned round are two wrong facts ("it gets more sand and becomes wider").
 */
export function tellsRelation(page: ReadPage, statement: number): boolean {
  const told = relations.get(page) ?? []
  relations.set(page, told)
  const { start, end } = page.statements[statement]!
  const said = () => page.text.slice(start, end)
  return (told[statement] ??= THE_THE.test(said()) || CONDITION.test(said()))
}
const relations = new WeakMap<ReadPage, boolean[]>()
