/** What `make` gives, made when it is first asked for. */
export function once<T>(make: () => T): () => T {
  let made: T | undefined
  return () => (made ??= make())
}
