/** What can go wrong when something is kept or read, in words for the student. */

export type StoreErrorKind =
  /** This browser keeps nothing here: no IndexedDB, a private window, blocked site data. */
  | 'refused'
  /** No room left. */
  | 'full'
  /** The browser closed the database and opening it again did not help. */
  | 'closed'
  /** A record or a backup that is there but cannot be read. */
  | 'unreadable'
  /** What is kept is no longer what was seen. */
  | 'changed'
  | 'unknown'

/** `message` says what happened, what was kept and what to do; `cause` is the browser's own error, if there is one. */
export class StoreError extends Error {
  override readonly name = 'StoreError'

  constructor(
    readonly kind: StoreErrorKind,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options)
  }
}

const MESSAGES = {
  refused:
    'This browser does not let Second Ink keep anything here. It may be a private window, or site data may be ' +
    'blocked. What is on this page is still here: copy it, then open Second Ink in an ordinary window.',
  full:
    'There is no room left on this device to keep this. Everything kept before is still there. ' +
    'Copy what is on this page, free some space, and try again.',
  closed:
    'The browser closed the place where your work is kept, and opening it again did not help. Everything kept ' +
    'before is still there. Copy what is on this page, then load the page again.',
} as const

/**
 * A browser's error as a `StoreError`; one that is a `StoreError` already comes back as it is. `reached`: whether the
 * database could be opened at all.
 */
export function asStoreError(cause: unknown, reached: boolean): StoreError {
  if (cause instanceof StoreError) return cause
  const kind = kindOf(cause, reached)
  if (kind !== 'unknown') return new StoreError(kind, MESSAGES[kind], { cause })
  const said = cause instanceof Error ? ` (the browser says: ${cause.message})` : ''
  return new StoreError(
    kind,
    `This could not be kept or read${said}. Everything kept before is still there. ` +
      'Try again; if it goes on, copy what is on this page and load the page again.',
    { cause },
  )
}

function kindOf(cause: unknown, reached: boolean): keyof typeof MESSAGES | 'unknown' {
  if (nameOf(cause) === 'QuotaExceededError') return 'full'
  if (wasClosed(cause)) return 'closed'
  return reached ? 'unknown' : 'refused'
}

/**
 * Whether the connection was lost. Browsers close it when they are short of memory or when site data is cleared.
 * A transaction then fails to start (InvalidStateError) or is cut off (AbortError); Safari says UnknownError,
 * "Connection to Indexed Database server lost".
 */
export function wasClosed(cause: unknown): boolean {
  const name = nameOf(cause)
  if (name === 'InvalidStateError' || name === 'AbortError') return true
  return name === 'UnknownError' && cause instanceof Error && /connection/i.test(cause.message)
}

const nameOf = (cause: unknown): string =>
  typeof cause === 'object' && cause !== null && 'name' in cause ? String(cause.name) : ''
