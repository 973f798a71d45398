/** A look-up table that only has its own rows: a student may write `constructor`, which every plain object answers to. */
export function table<T>(
  rows: Readonly<Record<string, T>>,
): Readonly<Record<string, T | undefined>> {
  return Object.assign(Object.create(null) as Record<string, T>, rows)
}
