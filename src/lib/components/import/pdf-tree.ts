/** The pages of a PDF that were read -> the draft that they make. */
import { pdfBlocks, treeOf, type DraftRead } from '$lib/syllabus/import'
import { counted } from '$lib/view/words'
import type { OpenPdf } from './open-pdf'

/** Throws a plain message where no page has any text. */
export function treeOfPages(
  name: string,
  title: string,
  read: Awaited<ReturnType<OpenPdf['read']>>,
): DraftRead {
  const { blocks, warnings, empty } = pdfBlocks(read.pages, read.beside)
  if (empty.length === read.pages.length)
    throw new Error(
      `${name}: ${empty.length === 1 ? 'this page has' : 'these pages have'} no text, only pictures, as scanned pages do. Nothing was kept. Bring the PDF from where it was first published, have the text recognised (OCR) by a scanning program, or copy the points and paste them.`,
    )
  const scanned =
    empty.length > 0
      ? [
          {
            message: `No text on ${counted(empty.length, 'page')}: ${empty.slice(0, 12).join(', ')}${empty.length > 12 ? ', …' : ''}.`,
          },
        ]
      : []
  return treeOf(blocks, title, [...scanned, ...warnings])
}
