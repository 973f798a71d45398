/** A file or a pasted text on its way to a draft or a syllabus, from one stage to the next. */
import { getImport, type SyllabusImport } from '$lib/store'
import type { Syllabus } from '$lib/syllabus'
import type { ColumnUse, DraftRead, DraftTree, Table } from '$lib/syllabus/import'
import { messageOf } from '../message-of'
import type { Stage } from './bring-stage'
import { bytesOf, titleOf } from './file-bytes'
import type { OpenPdf } from './open-pdf'

/** A long book. */
const MOST_TEXT = 12_000_000
const PASTED = 'The pasted text'

type Jobs = Parameters<Parameters<typeof import('./import-worker').runImport>[0]>[0]

export class BringSession {
  // What was read goes to workers and the store: a deep proxy could not be cloned.
  stage: Stage = $state.raw({ at: 'start' })
  /** Pages of a PDF that are read. */
  done: number | undefined = $state()
  fault = $state('')
  /** For a live region: what was just done. */
  told = $state('')
  /** A draft that was begun before. */
  waiting: SyllabusImport | undefined = $state.raw()
  #stopped = false

  /** Looks for a draft that was begun before. */
  open(): void {
    void getImport().then(
      (kept) => (this.waiting = kept),
      () => undefined,
    )
  }

  keepNow(): void {
    if (this.stage.at === 'draft') void this.stage.session.keepNow()
  }

  close(): void {
    this.#closePdf()
    if (this.stage.at === 'draft') this.stage.session.share.close()
  }

  takePasted(text: string): Promise<void> {
    return this.#attempt(() => this.#takeText(PASTED, text))
  }

  takeColumns(name: string, table: Table, uses: readonly ColumnUse[]): Promise<void> {
    return this.#attempt(() => this.#takeColumns(name, table, uses))
  }

  /** The draft that waits is gone on with. */
  goOn({ name, tree }: SyllabusImport): Promise<void> {
    return this.#openDraft(name, tree)
  }

  /** A syllabus that was read is changed first. */
  toDraft(name: string, syllabus: Syllabus): Promise<void> {
    return this.#attempt(async () => {
      const { syllabusTree } = await import('$lib/syllabus/import')
      await this.#openDraft(name, syllabusTree(syllabus))
    })
  }

  #closePdf() {
    this.#stopped = true
    if (this.stage.at === 'pages') this.stage.pdf.close()
    if (this.stage.at === 'reading') this.stage.stop()
    this.done = undefined
  }

  /** Back to the beginning; a draft stays kept. */
  leave(): void {
    this.#closePdf()
    if (this.stage.at === 'draft') {
      this.waiting = this.stage.session.share.saving.known
      this.stage.session.share.close()
    }
    this.stage = { at: 'start' }
  }

  async #attempt(work: () => Promise<void>) {
    this.fault = ''
    this.told = ''
    try {
      await work()
    } catch (error) {
      this.leave()
      this.fault = messageOf(error)
    }
  }

  takeFile(file: File): Promise<void> {
    return this.#attempt(async () => {
      this.#closePdf()
      this.#stopped = false
      this.stage = { at: 'reading', name: file.name, stop: () => undefined }
      const bytes = await bytesOf(file)
      const { decodeText, kindOfFile } = await import('./what-file')
      const kind = kindOfFile(file.name, bytes)
      if (kind === 'pdf') return this.#openPages(file.name, bytes)
      if (kind === 'docx')
        return this.#work(file.name, (jobs) => jobs.answerDocx(bytes, titleOf(file.name)))
      if (bytes.length > MOST_TEXT)
        throw new Error(
          `${file.name} is ${Math.round(bytes.length / 1e6)} MB; a text of at most ${MOST_TEXT / 1e6} MB can be read here. Nothing was changed.`,
        )
      const decoded = decodeText(bytes)
      if (!decoded)
        throw new Error(
          `${file.name} is not a text file, nor a PDF or a Word file. Nothing was changed.`,
        )
      await this.#takeText(file.name, decoded.text, decoded.taken)
    })
  }

  async #takeText(name: string, text: string, taken?: string) {
    const { kindOfText } = await import('$lib/syllabus/import')
    const kind = kindOfText(name, text)
    if (kind === 'syllabus') return this.#takeSyllabus(name, text)
    const title = name === PASTED ? 'My syllabus' : titleOf(name)
    if (kind === 'table') return this.#takeTable(name, text)
    await this.#work(
      name,
      (jobs) => (kind === 'case' ? jobs.answerCase(text) : jobs.answerText(text, title)),
      taken,
    )
  }
  async #takeSyllabus(name: string, source: string) {
    // Loaded on first use: the YAML parser is on no other page.
    const { readSyllabus } = await import('$lib/syllabus')
    const tried = readSyllabus(source)
    this.stage = {
      at: 'read',
      read: tried.ok
        ? { ok: true, name, source, syllabus: tried.syllabus }
        : { ok: false, name, mistakes: tried.mistakes, more: tried.more },
    }
  }

  async #takeTable(name: string, text: string) {
    const read = await this.#inWorker(name, (jobs) => jobs.answerTable(text))
    if (!read.ok) throw new Error(`${name}: ${read.fault} Nothing was kept.`)
    const { table } = read
    if (table.header) return this.#takeColumns(name, table, table.uses)
    const { default: Piece } = await import('./ChooseColumns.svelte')
    this.stage = { at: 'columns', name, table, Piece }
  }

  #takeColumns(name: string, table: Table, uses: readonly ColumnUse[]): Promise<void> {
    return this.#work(name, (jobs) => jobs.answerColumns(table, uses, titleOf(name)))
  }

  async #inWorker<T>(name: string, job: (jobs: Jobs) => Promise<T>): Promise<T> {
    const { runImport } = await import('./import-worker')
    const run = runImport(job)
    this.stage = { at: 'reading', name, stop: run.stop }
    return run.promise
  }

  async #work(name: string, job: (jobs: Jobs) => Promise<DraftRead>, taken?: string) {
    await this.#showDraft(name, await this.#inWorker(name, job), taken)
  }

  async #showDraft(name: string, read: DraftRead, taken?: string) {
    if (!read.ok) throw new Error(`${name}: ${read.fault} Nothing was kept.`)
    const note = `It is not in Unicode: it was read as ${taken}. Look at letters with accents.`
    const warnings = taken ? [{ message: note }, ...read.tree.warnings] : read.tree.warnings
    await this.#openDraft(name, { ...read.tree, warnings })
  }

  async #openDraft(name: string, tree: DraftTree) {
    const [{ DraftSession }, { default: Piece }] = await Promise.all([
      import('./draft-session.svelte'),
      import('./DraftEditor.svelte'),
    ])
    const session = new DraftSession(name, tree, this.waiting)
    this.stage = { at: 'draft', session, Piece }
    this.waiting = undefined
    await session.keepNow()
  }

  async #openPages(name: string, bytes: Uint8Array) {
    const [{ openPdf }, { default: Piece }] = await Promise.all([
      import('./open-pdf'),
      import('./ChoosePages.svelte'),
    ])
    this.stage = { at: 'pages', name, pdf: await openPdf(bytes), Piece }
  }

  readPages(name: string, pdf: OpenPdf, from: number, to: number): Promise<void> {
    return this.#attempt(async () => {
      this.#stopped = false
      this.done = 0
      try {
        const read = await pdf.read({
          from,
          to,
          onpage: (n) => (this.done = n),
          stopped: () => this.#stopped,
        })
        const { treeOfPages } = await import('./pdf-tree')
        const tree = treeOfPages(name, titleOf(name), read)
        pdf.close()
        await this.#showDraft(name, tree)
      } catch (error) {
        // It was stopped, and the page has moved on.
        if (!this.#stopped) throw error
      } finally {
        this.done = undefined
      }
    })
  }

  stopReading(): void {
    const reading = this.done !== undefined
    this.leave()
    this.told = reading ? 'Stopped. Nothing was kept.' : ''
  }

  /** It is a syllabus now. */
  async kept(): Promise<void> {
    if (this.stage.at === 'draft') await this.stage.session.end()
    this.stage = { at: 'start' }
  }

  async throwAway(): Promise<void> {
    if (this.stage.at === 'draft') await this.stage.session.end()
    this.stage = { at: 'start' }
    this.told = 'The draft was thrown away.'
  }
}
