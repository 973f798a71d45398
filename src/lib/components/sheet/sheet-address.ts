/** The address of the sheet as it is laid out now. */
import type { SheetLook } from '$lib/view/sheet-layout'

/** `search` with the look, and with the keys of the points where they are not those it began with. */
export function lookedAt(
  search: string,
  look: SheetLook,
  keys: readonly string[] | undefined,
): string {
  const query = new URLSearchParams(search)
  for (const name of ['as', 'paper', 'size', 'columns'] as const)
    query.set(name, String(look[name]))
  if (keys) query.set('points', keys.join(','))
  return `?${query}`
}
