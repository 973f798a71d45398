/** Everything that Second Ink keeps in a browser, and how it is taken out. */
import { eraseAll } from '$lib/store'

const PREFIX = 'second-ink-'

/**
 * The records first: where they cannot be erased it rejects, and nothing else is touched. Then the look that was
 * chosen, and the copies of the app itself, which the next visit fetches again.
 */
export async function eraseBrowser(): Promise<void> {
  await eraseAll()
  await aside(() => {
    for (const key of Object.keys(localStorage))
      if (key.startsWith(PREFIX)) localStorage.removeItem(key)
    delete document.documentElement.dataset.theme
  })
  await aside(async () => {
    const found = await navigator.serviceWorker?.getRegistrations()
    await Promise.all((found ?? []).map((one) => one.unregister()))
    if (!('caches' in globalThis)) return
    const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX))
    await Promise.all(names.map((name) => caches.delete(name)))
  })
}

/** A browser that keeps none of these things throws when it is asked. Then there is nothing of the kind to erase. */
async function aside(work: () => unknown): Promise<void> {
  try {
    await work()
  } catch {
    // There is none.
  }
}
