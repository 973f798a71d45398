/** Bytes as they come: what they are, and their text in whatever they are encoded. */
import { describe, expect, test } from 'vitest'
import { decodeText, kindOfFile } from '../../../src/lib/components/import/what-file'

const words = '1.1 Wellen erreichen den Strand schräg – „immer“.'
const utf16 = (text: string, big = false): Uint8Array => {
  const bytes = Buffer.from(text, 'utf16le')
  return new Uint8Array(big ? bytes.swap16() : bytes)
}
describe('the text of a file', () => {
  test.each([
    { in: 'UTF-8', bytes: new TextEncoder().encode(words) },
    { in: 'UTF-8 with a mark in front', bytes: new TextEncoder().encode(`\ufeff${words}`) },
    { in: 'UTF-16, little end first', bytes: utf16(`\ufeff${words}`) },
    { in: 'UTF-16, big end first', bytes: utf16(`\ufeff${words}`, true) },
    { in: 'UTF-16 without a mark, little end first', bytes: utf16(words) },
    { in: 'UTF-16 without a mark, big end first', bytes: utf16(words, true) },
  ])('in $in', ({ bytes }) => {
    const decoded = decodeText(bytes)
    expect(decoded?.text.replace('\ufeff', '')).toBe(words)
    expect(decoded?.taken).toBeUndefined()
  })

  // Dashes and quotation marks of that encoding are tried in a browser: this Node takes it for Latin-1.
  test('in Windows-1252 is told, for letters may be wrong', () => {
    expect(decodeText(new Uint8Array(Buffer.from('Wellen, schräg', 'latin1')))).toEqual({
      text: 'Wellen, schräg',
      taken: expect.stringContaining('Windows-1252') as string,
    })
  })

  test('that is none is refused', () => {
    expect(decodeText(new Uint8Array([0, 1, 2, 3, 0, 9, 8, 7, 0, 255]))).toBeUndefined()
  })
})

describe('a file of a kind that is not read', () => {
  const ascii = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'))
  test.each([
    ['points.xlsx', ascii('PK\u0003\u0004'), /points\.xlsx.*Save the table as CSV/],
    [
      'old.doc',
      ascii('\u00d0\u00cf\u0011\u00e0'),
      /old\.doc.*Save it as \.docx without a password/,
    ],
    ['notes.rtf', ascii('{\\rtf1'), /notes\.rtf.*Save it as \.docx/],
    ['photo.jpg', ascii('\u00ff\u00d8\u00ff'), /photo\.jpg is a picture.*type the points in/],
    ['page.html', ascii('<!doctype html>'), /page\.html is a web page.*paste it here/],
    ['cut.pdf', ascii('nothing'), /cut\.pdf does not begin as a PDF does.*Load it down once more/],
    ['cut.docx', ascii('nothing'), /cut\.docx does not begin as a Word file does/],
  ])('%s is refused by its name, with what to do', (name, bytes, says) => {
    expect(() => kindOfFile(name, bytes)).toThrow(says)
  })
  test.each([
    ['x.bin', ascii('%PDF-1.7'), 'pdf'],
    ['x.docx', ascii('PK\u0003\u0004'), 'docx'],
    ['x.md', ascii('# Waves'), 'text'],
  ])('%s is told by its first bytes', (name, bytes, kind) => {
    expect(kindOfFile(name, bytes)).toBe(kind)
  })
})
