/** Documents made by other programs than this one: tests/fixtures/import/README.md says which. */
import { describe, expect, test } from 'vitest'
import { answerDocx } from '../../../../src/workers/answer-import'
import { COAST, coastDocument } from '../../../fixtures/import/coast-document'
import { HARBOUR } from '../../../fixtures/import/harbour-document'
import { fixture, outline, pagesOf, pdfDraft, treeIn } from './files'

const leftOut = (tree: ReturnType<typeof treeIn>) =>
  tree.lines.flatMap(({ role, text }) => (role === 'out' ? [text] : []))

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

  test('of LibreOffice with tiers, footnotes, bullets of a symbol font and a row parted by the end of a page', async () => {
    const tree = treeIn(await pdfDraft(fixture('harbour.pdf')))
    expect(outline(tree)).toEqual(HARBOUR)
    expect(leftOut(tree)).toEqual([
      'Mooring lines are named after where they lead:',
      'Mooring lines are named after where they lead: springs stop her from moving along it:',
      'Higher tier only',
      'Students should know that:',
      'A sketch will do',
      'A wharf of timber counts as a quay here.',
      'Of the tide, not of the day.',
    ])
  })

  test('of TeX with headings over two columns, real hyphens, ligatures, footnotes, columns of objectives', async () => {
    const tree = treeIn(await pdfDraft(fixture('layouts.pdf')))
    const lines = outline(tree)
    expect(tree.title).toBe('Harbour Studies')
    // Every number once, in order, though the columns stand side by side and the table goes over a page.
    const refs = tree.lines.flatMap(({ role, ref }) => (role === 'out' ? [] : [ref]))
    const counted = (topic: number, most: number) =>
      Array.from({ length: most }, (_, i) => `${topic}.${i + 1}`)
    expect(refs).toEqual([
      '1', '1.1', '1.2(a)', '1.2(b)(i)', '1.2(b)(ii)', '1.3', '1.4',
      '2', ...counted(2, 8), '3', ...counted(3, 8), '4', ...counted(4, 23),
    ]) // prettier-ignore
    for (const line of [
      'point 1.1 A quay wall holds back the ground behind it.',
      'point 1.3 Fenders of a soft and flexible stuff keep the hull off the wall, and a difficult fit is made with fifty small ones.',
      'point 2.1 A channel is dredged where silt would fill it; short-term works are done by a hired dredger.',
      'point 2.2 The depth of the channel is given at low-water, the level from which charts are measured.',
      'point 2.3 Buoys are anchored to a heavy sinker, and their movement is watched.',
      'topic 3 Weather',
      'point 3.8 A harbour master may close the port in a gale.',
      'point 4.3 A container is a box of a standard size that goes from ship to lorry unopened.',
      'point 4.8 Cargo is lashed so that it cannot shift.',
      'point 4.23 A berth is booked ahead.',
    ])
      expect(lines).toContain(line)
    expect(tree.lines.map(({ text }) => text).join()).not.toMatch(
      /Page \d of|Harbour Board|second draft/,
    )
    expect(leftOut(tree)).toContain('A quay of timber is called a wharf in some ports.')
    expect(tree.lines.find(({ text }) => text === 'Rope, cork or rubber.')?.why).toBe('A footnote')
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
  test('with tiers, sub-points and bullets of a symbol font', async () => {
    expect(outline(treeIn(await answerDocx(fixture('harbour.docx'), 'A file')))).toEqual(HARBOUR)
  })

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
