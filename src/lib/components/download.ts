/** Gives the user a file. Nothing is sent: the browser writes it from memory. */
export function download(name: string, text: string, type = 'text/plain;charset=utf-8'): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // Safari reads the file only after the click is over.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
