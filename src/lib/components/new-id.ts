/** `crypto.randomUUID` is missing where the app is served without https from another machine of the house. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
