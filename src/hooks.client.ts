import type { HandleClientError } from '@sveltejs/kit'

/** A mistyped address is nobody's fault to report; everything else is told on the page and in the console. */
export const handleError: HandleClientError = ({ error, status, message }) => {
  if (status === 404) return { message }
  console.error(error)
  return { message: error instanceof Error ? error.message : message }
}
