/** What a text is, by its name and by how it begins. */
import { delimiterOf } from './csv'

export type TextKind = 'syllabus' | 'case' | 'table' | 'text'

export function kindOfText(name: string, source: string): TextKind {
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase()
  if (ending === 'yaml' || ending === 'yml') return 'syllabus'
  if (ending === 'csv' || ending === 'tsv') return 'table'
  if (ending === 'json') return 'case'
  const head = source
    .replace(/^\ufeff/, '')
    .trimStart()
    .slice(0, 20_000)
  if (
    /^(?:(?:#.*|---|)\s*\n)*\s*(?:format|topics)\s*:/.test(head) &&
    /^\s*topics\s*:|^\s*title\s*:/m.test(head)
  )
    return 'syllabus'
  if (/^\{\s*"/.test(head)) return 'case'
  return looksLikeTable(head) ? 'table' : 'text'
}

/** Tabs in nearly every line: cells copied out of a spreadsheet. Commas are in prose too: those need a file's ending. */
function looksLikeTable(head: string): boolean {
  const lines = head
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '')
    .slice(0, 20)
  return (
    lines.length > 1 &&
    delimiterOf(head) === '\t' &&
    lines.filter((line) => line.trim().includes('\t')).length >= lines.length * 0.8
  )
}
