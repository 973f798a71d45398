import type { YAMLError } from 'yaml'

const IDEA_QUOTES = `Where an idea holds quotation marks, put the whole idea between single quotes: '"backwash" / swash'.`

/** A YAML mistake in words for someone who writes a syllabus by hand; the library's own words where they will do. */
export function plainly(fault: YAMLError, source: string): string {
  const found = source.slice(fault.pos[0], fault.pos[1]).split('\n')[0]!.trim().slice(0, 40)
  switch (fault.code) {
    case 'TAB_AS_INDENT':
      return 'A tab stands at the beginning of this line: indent with spaces.'
    case 'BLOCK_AS_IMPLICIT_KEY':
      return fault.message.startsWith('Nested mappings')
        ? 'A second ": " on one line: put a text that holds ": " between quotation marks.'
        : 'The indentation of this list does not fit the lines above it.'
    case 'UNEXPECTED_TOKEN':
      return fault.message === 'Unexpected scalar at node end'
        ? `"${found}" stands after the end of a quoted text or list. ${IDEA_QUOTES}`
        : `${fault.message}.`
    case 'MISSING_CHAR':
      return missing(fault.message, found)
    case 'MULTILINE_IMPLICIT_KEY':
      return 'A field and its colon were expected on one line, with a space after the colon: title: Rock pools.'
    case 'BAD_SCALAR_START':
      return `A text cannot begin with "${found}": put it between quotation marks.`
    case 'BAD_INDENT':
      return `The indentation does not fit the lines above, or a list in [ ] or { } is not closed (${fault.message}).`
    case 'TAG_RESOLVE_FAILED':
      return `A text cannot begin with an exclamation mark (${found}): put it between quotation marks.`
    case 'MULTIPLE_DOCS':
      return 'A second document begins here: one file holds one syllabus.'
    case 'RESOURCE_EXHAUSTION':
      return 'Lists within lists, too deep to be a syllabus.'
    default:
      return fault.message.endsWith('.') ? fault.message : `${fault.message}.`
  }
}

function missing(message: string, found: string): string {
  if (message.startsWith('Missing closing'))
    return 'A text begins with this quotation mark, which is never closed.'
  if (message.startsWith('Missing , or :'))
    return `A comma was expected between the items of this list. ${IDEA_QUOTES}`
  if (message.startsWith('Implicit map keys'))
    return `A field with a colon was expected here, not "${found}".`
  return `${message}.`
}
