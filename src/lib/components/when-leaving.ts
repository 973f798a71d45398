/** The last moments in which a page can still keep something: a phone may end one that is out of sight without another word. */

/** Calls `keep` whenever the page goes out of sight or away. Gives what ends it. */
export function whenLeaving(keep: () => void): () => void {
  const hidden = () => {
    if (document.visibilityState === 'hidden') keep()
  }
  document.addEventListener('visibilitychange', hidden)
  window.addEventListener('pagehide', keep)
  return () => {
    document.removeEventListener('visibilitychange', hidden)
    window.removeEventListener('pagehide', keep)
  }
}
