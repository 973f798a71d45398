/** Tab through a page as it stands: each stop has a ring that is seen, in the order of the page, and the last one leads out. */
import type { Page } from '@playwright/test'

/** A page with more stops than this is looked at in its first part. */
const MOST_STOPS = 60

interface Stop {
  /** Which of the page's stops it is, in the order of the document; −1 for none of them. */
  readonly at: number
  readonly name: string
  readonly isDate: boolean
  readonly ring: boolean
  readonly seen: boolean
}

/** Faults, in words; the focus ends where it began, as far as the page lets it. */
export async function faultsOfKeyboard(page: Page): Promise<string[]> {
  const expected = await page.evaluate(markStops)
  await page.evaluate(() => {
    ;(document.activeElement as HTMLElement | null)?.blur()
    // The next Tab begins at the top, whatever was clicked before.
    getSelection()?.removeAllRanges()
    const top = document.querySelector<HTMLElement>('dialog[open]') ?? document.body
    const start = document.createElement('span')
    start.tabIndex = -1
    start.id = 'tab-start'
    top.prepend(start)
    start.focus()
  })
  const faults = faultsOf(await tabThrough(page, Math.min(expected, MOST_STOPS)), expected)
  await page.evaluate(() => document.getElementById('tab-start')?.remove())
  return faults
}

/** Where Tab leads, one after the other, `stops` of them. */
async function tabThrough(page: Page, stops: number): Promise<Stop[]> {
  await page.evaluate(noteStops)
  const session = await page.context().newCDPSession(page)
  const key = { key: 'Tab', code: 'Tab', windowsVirtualKeyCode: 9 }
  const press = () => [
    session.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...key }),
    session.send('Input.dispatchKeyEvent', { type: 'keyUp', ...key }),
  ]
  let met: Stop[] = []
  // A date is several stops in one field: day, month, year, and its calendar.
  for (let pressed = 0, lacking = stops; lacking > 0 && pressed < stops * 5; pressed += lacking) {
    // All at once: they are answered in order, and nobody waits for each.
    await Promise.all(Array.from({ length: lacking }, press).flat())
    met = (await page.evaluate(() => (globalThis as unknown as Noting).stopsMet)).filter(
      ({ at, isDate }, i, all) => !isDate || all[i - 1]?.at !== at,
    )
    lacking = stops - met.length
  }
  await session.detach()
  return met
}

function faultsOf(met: readonly Stop[], expected: number): string[] {
  const faults: string[] = []
  let last = -1
  for (const [i, { at, name, ring, seen }] of met.entries()) {
    if (at < 0) {
      faults.push(`stop ${i + 1} is on nothing that was expected: ${name}`)
      break
    }
    if (at <= last) {
      faults.push(`${name} comes after what stands below it, or again`)
      break
    }
    last = at
    if (!ring) faults.push(`${name} has no ring`)
    if (!seen) faults.push(`${name} is out of sight or covered`)
  }
  if (expected <= MOST_STOPS && last !== expected - 1 && faults.length === 0)
    faults.push(`${expected - 1 - last} stops were not reached`)
  return faults
}

interface Noting {
  stopsMet: Stop[]
}

/** Numbers the stops of the page in document order, one for each group of radio buttons; gives how many there are. */
function markStops(): number {
  const root = document.querySelector('dialog[open]') ?? document
  const groups = new Set<string>()
  const stops = [
    ...root.querySelectorAll<HTMLElement>(
      'a[href], button, input, select, textarea, summary, [tabindex]',
    ),
  ].filter((one) => {
    if (one.tabIndex < 0 || one.matches(':disabled') || one.closest('[inert]')) return false
    if (!one.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }))
      return false
    if (!(one instanceof HTMLInputElement) || one.type !== 'radio' || one.name === '') return true
    const chosen = root.querySelector<HTMLInputElement>(
      `input[type=radio][name="${CSS.escape(one.name)}"]:checked`,
    )
    if (chosen ? one !== chosen : groups.has(one.name)) return false
    groups.add(one.name)
    return true
  })
  for (const old of document.querySelectorAll('[data-stop]')) old.removeAttribute('data-stop')
  stops.forEach((one, at) => one.setAttribute('data-stop', String(at)))
  return stops.length
}

/** From now on each Tab notes where it led, when it is let go: by then the stop has the focus and is scrolled to. */
function noteStops(): void {
  const world = globalThis as unknown as Noting & { noting?: AbortController }
  world.stopsMet = []
  world.noting?.abort()
  world.noting = new AbortController()
  addEventListener(
    'keyup',
    ({ key }) => {
      if (key === 'Tab') world.stopsMet.push(stopNow())
    },
    { capture: true, signal: world.noting.signal },
  )

  function stopNow(): Stop {
    const one = document.activeElement as HTMLElement
    const ringed = (element: Element | null): boolean => {
      const { outlineStyle, outlineWidth } = element
        ? getComputedStyle(element)
        : { outlineStyle: 'none', outlineWidth: '0' }
      return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2
    }
    // A field and its button may have one ring round both. On the page that is written on, the margin line changes its colour.
    const margin =
      one.matches('textarea') && getComputedStyle(one).backgroundImage.includes('linear-gradient')
    const box = one.getBoundingClientRect()
    const x = Math.max(box.left, 0) + Math.min(box.width / 2, 20)
    const y = Math.max(box.top, 0) + Math.min(box.height / 2, 10)
    const top = box.width > 0 ? document.elementFromPoint(x, y) : null
    const covered =
      top === null ||
      !(one.contains(top) || top.contains(one) || top.closest('label')?.contains(one))
    const name = (one.getAttribute('aria-label') ?? one.textContent ?? '')
      .trim()
      .replace(/\s+/g, ' ')
    return {
      at: Number(one.dataset.stop ?? -1),
      name: `${one.tagName.toLowerCase()} “${name.slice(0, 40) || one.id}”`,
      isDate: one instanceof HTMLInputElement && one.type === 'date',
      ring: ringed(one) || ringed(one.parentElement) || margin,
      seen: !covered,
    }
  }
}
