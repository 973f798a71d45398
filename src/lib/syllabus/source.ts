import {
  Composer,
  Lexer,
  LineCounter,
  Parser,
  visit,
  type CST,
  type Document,
  type YAMLError,
} from 'yaml'
import { plainly } from './yaml-messages'

export interface SyllabusMistake {
  /** 1-based line of the file. */
  readonly line: number
  /** 1-based column, in UTF-16 code units. */
  readonly column: number
  /** Such as `topic "Longshore drift", point 2.1, ideas[2]`; lists are counted from 1. */
  readonly where: string
  /** What was found and what was expected. */
  readonly message: string
}

/** In UTF-16 code units; a syllabus of a thousand points has a tenth of it. */
export const MAX_LENGTH = 2_000_000
/** The format needs 10. */
const MAX_DEPTH = 40
const OPTIONS = {
  prettyErrors: false,
  logLevel: 'silent',
  resolveKnownTags: false,
  // Checked by fields.ts, whose check takes linear time.
  uniqueKeys: false,
} as const

/** A file's YAML tree, with the offset of every node; or what is wrong with the file as YAML. */
export type SourceRead =
  | { readonly ok: true; readonly document: Document.Parsed; readonly placeOf: PlaceOf }
  | { readonly ok: false; readonly mistakes: readonly SyllabusMistake[] }

export type PlaceOf = (offset: number) => { readonly line: number; readonly column: number }

/** Never throws. */
export function readSource(source: string): SourceRead {
  const refusal = refused(source)
  if (refusal)
    return { ok: false, mistakes: [{ line: 1, column: 1, where: 'the file', message: refusal }] }
  const lines = linesOf(source)
  const placeOf: PlaceOf = (offset) => {
    const { line, col } = lines.linePos(Math.min(offset, source.length))
    // Editors do not count a byte-order mark.
    const mark = line === 1 && source.startsWith('\uFEFF') ? 1 : 0
    return { line, column: Math.max(col - mark, 1) }
  }
  const mistakeAt = (offset: number, message: string): SyllabusMistake => ({
    ...placeOf(offset),
    where: 'the file',
    message,
  })
  const tokens = tokensOf(source)
  if ('tooDeepAt' in tokens) {
    return {
      ok: false,
      mistakes: [mistakeAt(tokens.tooDeepAt, 'Lists within lists, too deep to be a syllabus.')],
    }
  }
  const [document, second] = new Composer(OPTIONS).compose(tokens.tokens, true, source.length)
  // compose always gives one document when told to (forceDoc).
  const faults: YAMLError[] = [...document!.errors, ...document!.warnings]
  const startOf = quotesLeftOpen(document!)
  const mistakes = faults.map((fault) => mistakeAt(startOf(fault), plainly(fault, source)))
  if (second && mistakes.length === 0) {
    mistakes.push(
      mistakeAt(
        second.range[0],
        'A second document begins at this ---: one file holds one syllabus.',
      ),
    )
  }
  return mistakes.length > 0 ? { ok: false, mistakes } : { ok: true, document: document!, placeOf }
}

// The parser does not tell the counter of every line where the file is broken, so the lines are counted here.
function linesOf(source: string): LineCounter {
  const lines = new LineCounter()
  lines.addNewLine(0)
  for (let at = source.indexOf('\n'); at !== -1; at = source.indexOf('\n', at + 1)) {
    lines.addNewLine(at + 1)
  }
  return lines
}

/** Where to show a fault: a quotation mark left open is found by the library only where the text ends. */
function quotesLeftOpen(document: Document.Parsed): (fault: YAMLError) => number {
  const starts = new Map<number, number>()
  if (document.errors.some(isQuoteLeftOpen)) {
    visit(document, {
      Scalar: (_key, { range }) => {
        if (range) starts.set(range[1], range[0])
      },
    })
  }
  return (fault) => (isQuoteLeftOpen(fault) ? starts.get(fault.pos[0]) : undefined) ?? fault.pos[0]
}

const isQuoteLeftOpen = ({ code, message }: YAMLError): boolean =>
  code === 'MISSING_CHAR' && message.startsWith('Missing closing')

function refused(source: string): string | undefined {
  if (source.length > MAX_LENGTH) {
    const size = (source.length / 1e6).toFixed(1)
    return `The file has ${size} million characters; a syllabus file has at most ${MAX_LENGTH / 1e6} million. Split it into several syllabi.`
  }
  if (source.includes('\0')) return 'This is not a text file. A syllabus file is plain text (YAML).'
  if (source.trim() === '') return 'The file is empty. It should begin with format: 1 and a title.'
  return undefined
}

// The library's own parseDocument descends by recursion into lists of any depth; near the end of the stack V8 may
// abort the whole process (seen with 10,000 open brackets: "RegExpCompiler Allocation failed"), which no catch
// sees. So the flat first stage runs here, and stops where the nesting gets absurd.
function tokensOf(source: string): { tokens: CST.Token[] } | { tooDeepAt: number } {
  const parser = new Parser()
  const tokens: CST.Token[] = []
  for (const lexeme of new Lexer().lex(source)) {
    for (const token of parser.next(lexeme)) tokens.push(token)
    if (parser.stack.length > MAX_DEPTH) return { tooDeepAt: parser.offset }
  }
  for (const token of parser.end()) tokens.push(token)
  return { tokens }
}
