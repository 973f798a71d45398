/**
 * A page that knows nothing of the test before, without the second that a new one takes: what the app kept is erased, and so is what was
 * set up for the test; only files that were fetched are not fetched again. What cannot be taken back (scripts that run first, a clock,
 * routes, a session with the browser) or may have gone wrong ends the page with its test.
 */
import type { Browser, BrowserContext, CDPSession, Page } from '@playwright/test'

/** A file of the app in which no script runs: while it is open, nothing is kept any more. */
const PICTURE = '/icon.svg'
export const isPicture = (url: string): boolean => url.endsWith(PICTURE)

interface Kept {
  readonly context: BrowserContext
  readonly page: Page
  /** A session of its own that is left open would keep the page from being looked at as on paper. */
  readonly session: () => Promise<CDPSession>
  readonly spent: () => boolean
}

export class KeptPage {
  #kept: Kept | undefined

  /** The page of the test before, as new; or one that is. */
  async open(browser: Browser): Promise<{ context: BrowserContext; page: Page }> {
    this.#kept ??= await fresh(browser)
    return this.#kept
  }

  /** `well`: the test passed. */
  async close(well: boolean, baseURL: string): Promise<void> {
    const kept = this.#kept
    if (!kept) return
    if (well && !kept.spent() && !kept.page.isClosed()) await asNew(kept, baseURL)
    else {
      this.#kept = undefined
      await kept.context.close()
    }
  }
}

async function fresh(browser: Browser): Promise<Kept> {
  const context = await browser.newContext()
  const page = await context.newPage()
  const session = context.newCDPSession.bind(context, page)
  let spent = false
  /** From now on the thing cannot be used again once one of these was called. */
  const spends = <T extends object>(thing: T, ...names: (keyof T & string)[]) => {
    for (const name of names) {
      const call = thing[name] as (...args: unknown[]) => unknown
      Object.assign(thing, {
        [name]: (...args: unknown[]) => {
          spent = true
          return call.apply(thing, args)
        },
      })
    }
  }
  spends(context, 'addInitScript', 'route', 'newCDPSession', 'setOffline', 'exposeFunction', 'on')
  spends(context.clock, 'install', 'setFixedTime', 'pauseAt')
  spends(page, 'addInitScript', 'route', 'exposeFunction', 'on')
  return { context, page, session, spent: () => spent }
}

async function asNew({ context, page, ...kept }: Kept, baseURL: string): Promise<void> {
  for (const other of context.pages()) if (other !== page) await other.close()
  await page.goto(PICTURE)
  await page.evaluate(() => sessionStorage.clear())
  const session = await kept.session()
  await session.send('Storage.clearDataForOrigin', { origin: baseURL, storageTypes: 'all' })
  await session.detach()
  await page.emulateMedia({
    media: null,
    colorScheme: null,
    reducedMotion: null,
    forcedColors: null,
  })
  await page.setViewportSize({ width: 1280, height: 720 })
  await page.mouse.move(0, 0)
}
