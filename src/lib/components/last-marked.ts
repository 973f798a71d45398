/** The check that was marked last, held in memory alone: the way to a page that could not be kept. */
import type { Check } from '$lib/recall'
import type { Page } from '$lib/store'

interface LastMarked {
  readonly check: Check
  readonly page: Page
  /** Why it could not be kept. */
  readonly fault?: string
}

export const lastMarked: { current: LastMarked | undefined } = { current: undefined }
