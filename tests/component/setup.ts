/** What jsdom lacks and the pages use. Every test begins with nothing kept. */
import '@testing-library/jest-dom/vitest'
import 'fake-indexeddb/auto'
import { configure } from '@testing-library/svelte'
import { clear, createStore } from 'idb-keyval'
import { afterEach, beforeEach, vi, type MockInstance } from 'vitest'

// Pages go to other pages through SvelteKit, which runs in the real app only: the tests look at where they go.
vi.mock('$app/navigation', () => ({
  goto: vi.fn(() => Promise.resolve()),
  beforeNavigate: vi.fn(),
}))

// No test asserts a time: this only ends what hangs, on a busy machine as well.
configure({ asyncUtilTimeout: 20_000 })

const raw = createStore('second-ink', 'records')
let timers: MockInstance<typeof setTimeout>
beforeEach(async () => {
  await clear(raw)
  localStorage.clear()
  timers = vi.spyOn(globalThis, 'setTimeout')
})

afterEach(() => {
  // A page keeps what was typed half a second later, gone or not: that must not be kept in the next test.
  for (const { value } of timers.mock.results) clearTimeout(value as NodeJS.Timeout)
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
})

// jsdom has no modal dialogs.
HTMLDialogElement.prototype.showModal = function showModal() {
  this.open = true
}

HTMLDialogElement.prototype.close = function close() {
  this.open = false
  this.dispatchEvent(new Event('close'))
}

// Nor animations.
Element.prototype.animate = () => ({ cancel: () => undefined }) as Animation
