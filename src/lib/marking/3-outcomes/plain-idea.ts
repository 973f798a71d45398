/** An idea of the mark scheme read aloud: the first alternative of each part, without brackets and quotation marks. */
export function plainIdea(written: string): string {
  return written
    .split(/\s\+\s/)
    .map((part) =>
      part
        .split(/\s\/\s/)[0]!
        .replace(/[()"“”]/g, '')
        .trim(),
    )
    .join(', ')
}
