/** The rows of a data file: one a line; comments (`#`) and empty lines left out. */
export function rowsOf(data: string): string[] {
  return data
    .split('\n')
    .map((line) => (line.includes('#') ? line.replace(/(?:^|\s)#.*$/, '') : line).trim())
    .filter((line) => line !== '')
}

export function wordsOf(data: string): Set<string> {
  return new Set(rowsOf(data).flatMap((line) => line.split(/[\s,]+/).filter(Boolean)))
}
