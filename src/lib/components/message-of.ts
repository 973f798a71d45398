/** What is said of something that failed: every fault of the rooms is one plain sentence. */
export const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error)
