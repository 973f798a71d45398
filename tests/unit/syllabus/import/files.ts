/** Fixture files, and a PDF's pages by the library's build for Node. */
import { readFileSync } from 'node:fs'
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { pdfPage } from '../../../../src/lib/components/import/pdf-page'
import {
  pdfBlocks,
  treeOf,
  type DraftRead,
  type DraftTree,
  type PdfPage,
} from '../../../../src/lib/syllabus/import'

export const fixture = (name: string): Uint8Array<ArrayBuffer> =>
  new Uint8Array(readFileSync(new URL(`../../../fixtures/import/${name}`, import.meta.url)))

export async function pagesOf(bytes: Uint8Array): Promise<PdfPage[]> {
  const loading = getDocument({
    data: bytes.slice(),
    verbosity: 0,
    stopAtErrors: true,
    isEvalSupported: false,
  })
  try {
    const document = await loading.promise
    const pages: PdfPage[] = []
    for (let n = 1; n <= document.numPages; n += 1)
      pages.push(await pdfPage(await document.getPage(n), OPS as never))
    return pages
  } finally {
    await loading.destroy()
  }
}

export async function pdfDraft(bytes: Uint8Array): Promise<DraftRead> {
  const { blocks, warnings } = pdfBlocks(await pagesOf(bytes))
  return treeOf(blocks, 'A file', warnings)
}

export function treeIn(read: DraftRead): DraftTree {
  if (!read.ok) throw new Error(read.fault)
  return read.tree
}

/** Topics with their points, as rows of words. */
export const outline = (tree: DraftTree): string[] =>
  tree.lines
    .filter(({ role }) => role !== 'out')
    .map(({ role, ref, text }) => `${role} ${ref} ${text}`.replace(/\s+/g, ' '))
