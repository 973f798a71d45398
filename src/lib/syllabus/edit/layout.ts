/** How a file is laid out, so that what is written anew in it looks like the rest. */

export interface Layout {
  readonly indent: number
  readonly indentSeq: boolean
  readonly flowCollectionPadding: boolean
  /** 0: lines are not broken. */
  readonly lineWidth: number
  readonly newline: string
  /** A byte-order mark, or ''. */
  readonly mark: string
}

export function layoutOf(source: string): Layout {
  const lines = source.split(/\r?\n/)
  const topics = lines.findIndex((line) => /^topics:/.test(line))
  const item = lines.slice(topics + 1).find((line) => /^ *- /.test(line)) ?? '  - '
  const dash = item.indexOf('-')
  // Folded texts show that their author breaks lines, and where.
  const folds = lines.some((line) => /:\s+>[-+]?\s*$|-\s+>[-+]?\s*$/.test(line))
  const longest = lines.reduce((most, line) => Math.max(most, line.length), 0)
  return {
    indent: dash > 0 && dash <= 8 ? dash : 2,
    indentSeq: dash > 0,
    flowCollectionPadding: !/[[{][^\s\]}]/.test(source.replace(/"[^"]*"|'[^']*'/g, '')),
    lineWidth: folds ? Math.min(Math.max(longest, 80), 160) : 0,
    newline: source.includes('\r\n') ? '\r\n' : '\n',
    mark: source.startsWith('\uFEFF') ? '\uFEFF' : '',
  }
}
