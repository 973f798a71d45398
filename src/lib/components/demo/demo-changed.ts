/** Tells the banner, and whoever else asks, that the demo came or went. */
const listeners = new Set<() => void>()

/** Gives the function that ends the listening. */
export function onDemoChanged(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const tellDemoChanged = (): void => listeners.forEach((listener) => listener())
