/** What the import worker does: documents and long texts -> drafts, away from the page. */
import {
  caseTree,
  docxBlocks,
  readTable,
  tableTree,
  textBlocks,
  treeOf,
  type ColumnUse,
  type DraftRead,
  type Table,
  type TableRead,
} from '../lib/syllabus/import'

/** Unpacked, the text of a thousand pages has less. */
const MOST_UNPACKED = 100_000_000

export const answerText = (source: string, title: string): DraftRead =>
  treeOf(textBlocks(source), title)
export const answerCase = (source: string): DraftRead => caseTree(source)
export const answerTable = (source: string): TableRead => readTable(source)
export const answerColumns = (table: Table, uses: readonly ColumnUse[], title: string): DraftRead =>
  tableTree(table, uses, title)

/** Never rejects: what cannot be read is a fault in words. */
export async function answerDocx(bytes: Uint8Array, title: string): Promise<DraftRead> {
  const unpacked = unpackedSize(bytes)
  if (unpacked === undefined) return { ok: false, fault: DAMAGED }
  if (unpacked > MOST_UNPACKED)
    return {
      ok: false,
      fault: `Unpacked, this document has ${Math.round(unpacked / 1e6)} MB: no syllabus is as long. Copy the part you need into a new document.`,
    }
  try {
    const { default: mammoth } = await import('mammoth')
    let document: unknown
    // The library takes the one in the browser and the other in Node.
    const input = { arrayBuffer: bytes.slice().buffer, buffer: bytes }
    await mammoth.convertToHtml(input as never, {
      transformDocument: (read: Record<string, unknown>) => {
        document = read
        // Nothing is left to be turned into HTML, and no picture is unpacked.
        return { ...read, children: [] }
      },
      externalFileAccess: false,
    })
    return treeOf(docxBlocks(document), title)
  } catch {
    return { ok: false, fault: DAMAGED }
  }
}

const DAMAGED =
  'This Word file is damaged, or it is none: it could not be unpacked. Open it in the program it comes from, save it again as .docx, and bring that.'

/** By the list at the end of a ZIP file (PKWARE APPNOTE 4.3.12); undefined where there is none. */
export function unpackedSize(bytes: Uint8Array): number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let end = bytes.length - 22
  while (end >= 0 && end > bytes.length - 66_000 && view.getUint32(end, true) !== 0x06054b50)
    end -= 1
  if (end < 0 || view.getUint32(end, true) !== 0x06054b50) return undefined
  let at = view.getUint32(end + 16, true)
  let size = 0
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) return undefined
    size += view.getUint32(at + 24, true)
    at +=
      46 +
      view.getUint16(at + 28, true) +
      view.getUint16(at + 30, true) +
      view.getUint16(at + 32, true)
  }
  return size
}
