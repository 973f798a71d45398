import { contentKeys, type ReadPage } from '../1-statements/page'

const CARRIES = new Set(
  'it its they them their this these that those he she his her which so then because also and there here both such therefore thus hence one ones'.split(
    ' ',
  ),
)

/** Which neighbouring statements carry on the same subject: `true` at i where statement i + 1 goes on from i. */
export function carriedOn(page: ReadPage): readonly boolean[] {
  const keys = page.statements.map((statement) => contentKeys(page, statement))
  return page.statements.slice(0, -1).map((one, i) => {
    const two = page.statements[i + 1]!
    if (one.paragraph !== two.paragraph) return false
    // The items of one list.
    if (one.bullet && two.bullet) return true
    const opening = page.tokens.slice(two.from, Math.min(two.to, two.from + 3)).map((t) => t.text)
    if (opening.some((word) => CARRIES.has(word))) return true
    for (const key of keys[i + 1]!) if (keys[i]!.has(key)) return true
    return false
  })
}

/** The runs of statements around `s` in which the ideas of one point may stand together: shortest first. */
export function windowsAt(s: number, carried: readonly boolean[]): (readonly [number, number])[] {
  return [0, 1, 2].slice(0, longestAt(s, carried) + 1).map((more) => [s, s + more] as const)
}

/** How many statements after `s` the longest of them has. */
export function longestAt(s: number, carried: readonly boolean[]): number {
  if (!carried[s]) return 0
  return carried[s + 1] ? 2 : 1
}
