/** Documents made by other programs than this one: tests/fixtures/import/README.md says which. */
import { describe, expect, test } from 'vitest'
import { answerDocx } from '../../../../src/workers/answer-import'
import { COAST, coastDocument } from '../../../fixtures/import/coast-document'
import { fixture, outline, pagesOf, pdfDraft, treeIn } from './files'

const coast = COAST.flatMap(({ ref, title, points }) => [
  `topic ${ref} ${title}`,
  ...points.map(([number, text]) => `point ${number} ${text}`),
])

describe('a PDF', () => {
  test('of LibreOffice: headings, numbers, letters, a table; heads and page numbers are left out', async () => {
    const tree = treeIn(await pdfDraft(fixture('coast.pdf')))
    expect(tree.title).toBe('Coasts')
    expect(outline(tree)).toEqual(coast)
    expect(tree.lines.find(({ ref }) => ref === '3.2.2')?.place).toEqual({
      kind: 'page',
      number: 2,
    })
    expect(tree.warnings.map(({ message }) => message).join()).toContain(
      'Shoreline Science, specification',
    )
  })

  test('of TeX in two columns: read down one and then the other, hyphenated words are whole', async () => {
    const lines = outline(treeIn(await pdfDraft(fixture('two-columns.pdf'))))
    expect(lines).toContain('topic 2 Animals')
    expect(lines).toContain(
      'point 1.4 Barnacles filter microscopic food from the surrounding water with feathery appendages.',
    )
    expect(lines).toContain(
      'point 2.4 Anemones contract their tentacles and become shapeless, jelly-like lumps during uncovering.',
    )
    expect(lines.filter((line) => line.startsWith('point'))).toHaveLength(12)
  })

  test('of forty pages has every point of every page', async () => {
    const tree = treeIn(await pdfDraft(fixture('forty-pages.pdf')))
    const points = tree.lines.filter(({ role }) => role === 'point')
    expect(points).toHaveLength(40 * 18)
    expect(points.map(({ ref }) => ref)).toEqual(
      Array.from({ length: 40 }, (_, t) =>
        Array.from({ length: 18 }, (__, p) => `${t + 1}.${p + 1}`),
      ).flat(),
    )
    expect(points.every(({ place }, i) => place?.number === Math.floor(i / 18) + 1)).toBe(true)
  })

  test('that was scanned has no text on any page', async () => {
    const pages = await pagesOf(fixture('scanned.pdf'))
    expect(pages.map(({ items }) => items)).toEqual([[], []])
  })

  test('with a password is told apart from a damaged one', async () => {
    await expect(pagesOf(fixture('encrypted.pdf'))).rejects.toMatchObject({
      name: 'PasswordException',
    })
  })
})

describe('a Word file', () => {
  test('of the docx library', async () => {
    const tree = treeIn(await answerDocx(new Uint8Array(await coastDocument()), 'A file'))
    expect(tree.title).toBe('Coasts')
    expect(outline(tree)).toEqual(coast)
  })

  test('of LibreOffice', async () => {
    expect(outline(treeIn(await answerDocx(fixture('coast-libreoffice.docx'), 'A file')))).toEqual(
      coast,
    )
  })

  test.each([
    ['cut short', fixture('coast-libreoffice.docx').slice(0, 4000)],
    ['of noise', new Uint8Array(500).fill(80)],
    ['empty', new Uint8Array(0)],
  ])('that is %s is refused in words', async (_what, bytes) => {
    expect(await answerDocx(bytes, 'A file')).toMatchObject({
      ok: false,
      fault: expect.stringContaining('damaged') as string,
    })
  })
})
