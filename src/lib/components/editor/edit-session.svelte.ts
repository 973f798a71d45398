/** One syllabus while it is edited: its form, the steps so far, and its being kept as it is typed. */
import {
  beginEdits,
  changeEdits,
  redoEdit,
  undoEdit,
  type Edits,
  type SyllabusForm,
} from '$lib/syllabus'
import { editKey, type SyllabusEdit } from '$lib/store'
import { keepDrafts, type DraftKeeper } from '../draft-keeper'
import { DraftWindow } from '../draft-window.svelte'

export interface Begun {
  /** Under which the edit is kept. */
  readonly id: string
  /** The file that the edit was begun from; '' for a new syllabus. */
  readonly source: string
  /** What is in use: an edit that comes to the same is no edit. */
  readonly inUse: SyllabusForm
  /** Where an edit goes on. */
  readonly form: SyllabusForm
}

export class EditSession {
  edits: Edits = $state.raw() as Edits
  /** For a live region: what was just done. */
  told = $state('')
  fault = $state('')
  /** Whether what is on the page is kept. */
  kept = $state(true)
  readonly changed: boolean = $derived.by(
    () => this.form !== this.begun.inUse && !sameForm(this.form, this.begun.inUse),
  )
  readonly begun: Begun
  readonly share: DraftWindow<'edit'>
  readonly #keeper: DraftKeeper<SyllabusForm>

  constructor(begun: Begun) {
    this.begun = begun
    this.edits = beginEdits(begun.form)
    this.share = new DraftWindow('edit', editKey(begun.id))
    // Where it cannot be read now, the first step says so.
    void this.share.open().catch(() => undefined)
    const save = (form: SyllabusForm) =>
      sameForm(form, begun.inUse)
        ? this.share.end(this.#record(form))
        : this.share.save(this.#record(form))
    this.#keeper = keepDrafts<SyllabusForm>(save, {
      onkept: (form) => {
        this.fault = ''
        if (form === this.form) this.kept = true
      },
      onfault: (error) => (this.fault = error instanceof Error ? error.message : String(error)),
    })
  }

  get form(): SyllabusForm {
    return this.edits.form
  }

  /** Does a step. `field` joins it to typing in the same field just before; `say` is for a live region. */
  do(
    form: SyllabusForm,
    what: string,
    { field, say }: { field?: string; say?: string } = {},
  ): void {
    const step = { what, atMs: Date.now(), ...(field === undefined ? {} : { field }) }
    this.#now(changeEdits(this.edits, form, step), say ?? '')
  }

  undo(): void {
    const what = this.edits.past.at(-1)?.what
    if (what !== undefined) this.#now(undoEdit(this.edits), `Taken back: ${what}.`)
  }

  redo(): void {
    const what = this.edits.future.at(-1)?.what
    if (what !== undefined) this.#now(redoEdit(this.edits), `Done again: ${what}.`)
  }

  /** Of two edits. What is not taken is set aside; the other one is taken as a step that can be taken back. */
  choose(which: 'mine' | 'theirs'): void {
    const theirs = this.share.other
    if (!theirs) return
    this.share.chosen(which === 'mine' ? theirs : this.#record(this.form))
    if (which === 'theirs')
      this.do(theirs.form, 'what the other window wrote', { say: 'Taken from the other window.' })
    this.#keeper.changed(this.form)
  }

  keepNow(): Promise<void> {
    return this.#keeper.keepNow()
  }

  /** Nothing more is kept: the edit was put in use, or left. */
  stop(): Promise<void> {
    return this.#keeper.stop()
  }

  #record(form: SyllabusForm): SyllabusEdit {
    const { id, source } = this.begun
    return { schema: 1, id, source, form, savedAtMs: Date.now() }
  }

  #now(edits: Edits, say: string): void {
    if (edits === this.edits) return
    this.edits = edits
    this.told = say
    this.kept = false
    this.#keeper.changed(edits.form)
  }
}

const sameForm = (a: SyllabusForm, b: SyllabusForm): boolean =>
  JSON.stringify(withoutKeys(a)) === JSON.stringify(withoutKeys(b))

/** Keys tell where something stood: a point that was moved and moved back is where it was. */
const withoutKeys = (form: SyllabusForm) => ({
  ...form,
  topics: form.topics.map(({ key: _topic, points, ...topic }) => ({
    ...topic,
    points: points.map(({ key: _point, ...point }) => point),
  })),
})
