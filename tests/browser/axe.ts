/** Violations of accessibility, as axe finds them on a page as it stands. */
import { createRequire } from 'node:module'
import AxeBuilder from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'

/** The rules whose answer depends on the colours. In a second scheme, on a page as it stands, no other one can find anything new. */
const OF_COLOURS = ['color-contrast', 'link-in-text-block']

/** What is looked for: all that is on by itself, but for what is named. At another width no colour is another one. */
export type Look = 'all' | 'colours' | 'all but colours' | { readonly tags: readonly string[] }

/** No violations of WCAG 2.2 AA or of axe's best practices. */
export async function expectNoViolations(page: Page, look: Look = 'all'): Promise<void> {
  const found = await violations(page, look)
  // A colour may still be on its way: what is a violation is one the second time as well.
  if (found.length > 0) expect(await violations(page, look)).toEqual([])
}

export async function violations(page: Page, look: Look): Promise<string[]> {
  // The app has no frames: run in the page itself, axe finds the same in a quarter of the time, most of it on long pages.
  // Two looks at one page take one axe.
  const there = await page.evaluate(() => 'axe' in globalThis)
  const axe = new AxeBuilder({ page, axeSource: there ? ';' : axeSource }).setLegacyMode()
  axe.options({ resultTypes: ['violations'] })
  if (look === 'colours') axe.withRules(OF_COLOURS)
  else if (look === 'all but colours') axe.disableRules(OF_COLOURS)
  else if (look !== 'all') axe.withTags([...look.tags])
  const { violations } = await axe.analyze()
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
  )
}

interface Color {
  r: number
  g: number
  b: number
  alpha: number
  parseString: (text: string) => Color
}
declare const axe: {
  readonly commons: { readonly color: { readonly Color: { prototype: Color } } }
}

/** A page has a dozen colours, and axe reads each of them thousands of times: half of what it takes. */
function readColoursOnce(): void {
  const { prototype } = axe.commons.color.Color
  const parse = prototype.parseString
  const known = new Map<string, Pick<Color, 'r' | 'g' | 'b' | 'alpha'>>()
  prototype.parseString = function parseOnce(text) {
    const read = known.get(text)
    if (read) return Object.assign(this, read)
    parse.call(this, text)
    const { r, g, b, alpha } = this
    known.set(text, { r, g, b, alpha })
    return this
  }
}

const ofBuilder = createRequire(createRequire(import.meta.url).resolve('@axe-core/playwright'))
const { source } = ofBuilder('axe-core') as { source: string }
const axeSource = `${source};(${String(readColoursOnce)})()`
