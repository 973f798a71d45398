/** A PDF, opened page by page in the library's worker; loaded on first use, from this app's own files. */
import type { PDFDocumentProxy } from 'pdfjs-dist'
import type { PdfPage } from '$lib/syllabus/import'
import { pdfPage } from './pdf-page'

export interface OpenPdf {
  readonly pages: number
  /** Draws a page, `width` CSS pixels wide. */
  readonly show: (page: number, canvas: HTMLCanvasElement, width: number) => Promise<void>
  readonly read: (wanted: Wanted) => Promise<{ pages: PdfPage[]; beside: PdfPage[] }>
  /** Ends the worker and gives its memory back. */
  readonly close: () => void
}

export interface Wanted {
  readonly from: number
  readonly to: number
  readonly onpage: (done: number) => void
  readonly stopped: () => boolean
}

/** Larger pictures are not unpacked: text is wanted. */
const MOST_PIXELS = 16_000_000
/** So many pages show what is printed on each of them. */
const TELLING = 4

const load = () => import('pdfjs-dist')
/** While the user looks for the file. */
export const getReady = (): void => void load().catch(() => undefined)

export class PdfFault extends Error {}
export class Stopped extends Error {}

/** Rejects with a PdfFault in plain words. */
export async function openPdf(bytes: Uint8Array): Promise<OpenPdf> {
  const { getDocument, OPS, PDFWorker } = await load()
  const port = new Worker(new URL('../../../workers/pdf.worker.ts', import.meta.url), {
    type: 'module',
    name: 'pdf',
  })
  const worker = PDFWorker.create({ port })
  const close = () => {
    worker.destroy()
    port.terminate()
  }
  try {
    // The bytes go to the worker: no second copy stays here.
    const document = await getDocument({
      data: bytes,
      worker,
      isEvalSupported: false,
      stopAtErrors: true,
      useWasm: false,
      useSystemFonts: true,
      enableXfa: false,
      maxImageSize: MOST_PIXELS,
      verbosity: 0,
    }).promise
    return {
      pages: document.numPages,
      close,
      show: (page, canvas, width) => draw(document, page, canvas, width),
      async read(wanted) {
        const read = async (n: number) => {
          if (wanted.stopped()) throw new Stopped()
          try {
            return await pdfPage(await document.getPage(n), OPS)
          } catch {
            throw new PdfFault(
              `Page ${n} is damaged and could not be read. Nothing was taken. Choose pages without it, or save the PDF anew in another program.`,
            )
          }
        }
        const pages: PdfPage[] = []
        for (let n = wanted.from; n <= wanted.to; n += 1) {
          pages.push(await read(n))
          wanted.onpage(n - wanted.from + 1)
        }
        const beside: PdfPage[] = []
        for (let n = 1; n <= Math.min(document.numPages, 60); n += 1)
          if ((n < wanted.from || n > wanted.to) && pages.length + beside.length < TELLING)
            beside.push(await read(n).catch(() => BLANK))
        return { pages, beside }
      },
    }
  } catch (error) {
    close()
    throw new PdfFault(plainly(error))
  }
}

const BLANK: PdfPage = { number: 0, width: 1, height: 1, items: [], rules: [] }

async function draw(
  document: PDFDocumentProxy,
  n: number,
  canvas: HTMLCanvasElement,
  width: number,
) {
  const page = await document.getPage(n)
  const scale =
    (width * Math.min(window.devicePixelRatio || 1, 2)) / page.getViewport({ scale: 1 }).width
  const viewport = page.getViewport({ scale })
  canvas.width = Math.floor(viewport.width)
  canvas.height = Math.floor(Math.min(viewport.height, viewport.width * 4))
  await page.render({ canvas, viewport }).promise
}

function plainly(error: unknown): string {
  const name = error instanceof Error ? error.name : ''
  if (name === 'PasswordException')
    return 'This PDF is locked with a password. Open it in the program you read PDFs with, save or print it as a PDF without a password, and bring that.'
  return 'This PDF is damaged: it could not be opened. Load it down once more from where it comes from, or save it anew in another program.'
}
