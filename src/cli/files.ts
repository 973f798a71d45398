import { readFileSync } from 'node:fs'
import { readSyllabus, type Syllabus, type Topic } from '../lib/syllabus'

/** A mistake of the person at the terminal: told in one line, exit 2. */
export class CliError extends Error {}

export type Command = (
  args: readonly string[],
  write: (text: string) => void,
) => void | Promise<void>

/** Runs a command with what stands after its name in the terminal; a `CliError` becomes one clear line on stderr. */
export function run(command: Command): void {
  const told = (error: unknown) => {
    if (!(error instanceof CliError)) throw error
    process.stderr.write(`${error.message}\n`)
    process.exitCode = 2
  }
  try {
    command(process.argv.slice(2), (text) => process.stdout.write(text))?.catch(told)
  } catch (error) {
    told(error)
  }
}

/** A UTF-8 file as text, without its byte order mark. */
export function readText(path: string): string {
  let bytes: Buffer
  try {
    bytes = readFileSync(path)
  } catch (error) {
    throw new CliError(`${path}: ${reason(error)}`)
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new CliError(`${path}: not a UTF-8 text file; save it as plain text in UTF-8`)
  }
}

export function readSyllabusFile(path: string): Syllabus {
  const read = readSyllabus(readText(path))
  if (read.ok) return read.syllabus
  const [first] = read.mistakes
  const more = read.mistakes.length - 1 + read.more
  const rest = more > 0 ? ` (and ${more} more)` : ''
  throw new CliError(
    `${path}:${first!.line}:${first!.column}: ${first!.where}: ${first!.message}${rest}`.replace(
      /\s*\n\s*/g,
      ' ',
    ),
  )
}

export function readTopic(path: string, id: string): Topic {
  const { topics } = readSyllabusFile(path)
  const topic = topics.find((t) => t.id === id)
  if (!topic)
    throw new CliError(`${path}: no topic ${id}; it has ${topics.map((t) => t.id).join(', ')}`)
  return topic
}

function reason(error: unknown): string {
  const code = (error as { code?: unknown }).code
  if (code === 'ENOENT') return 'no such file'
  if (code === 'EISDIR') return 'a folder, not a file'
  if (code === 'EACCES') return 'not allowed to read it'
  return String(error)
}
