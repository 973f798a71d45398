/** Tells whether something is open in another window of this browser. */

/**
 * Holds `name` until the function that comes back is called, or until the window closes. `ontaken` is told where
 * another window holds it: that one is not locked out, because nothing may keep a student from their own page.
 */
export function holdInWindow(name: string, ontaken: () => void): () => void {
  let letGo = () => {}
  const held = new Promise<void>((done) => (letGo = done))
  // Not in older browsers, and not where the app is served without https from another machine.
  if (typeof navigator !== 'undefined' && 'locks' in navigator)
    void navigator.locks
      .request(name, { ifAvailable: true }, (lock) => (lock === null ? ontaken() : held))
      .catch(() => undefined)
  return letGo
}
