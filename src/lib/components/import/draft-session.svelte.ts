/** A draft while it is put right: every step can be taken back, and is kept soon after it was made. */
import { IMPORT_KEY, type SyllabusImport } from '$lib/store'
import {
  beginHistory,
  redo,
  step,
  undo,
  type DraftHistory,
  type DraftTree,
} from '$lib/syllabus/import'
import { keepDrafts, type DraftKeeper } from '../draft-keeper'
import { DraftWindow } from '../draft-window.svelte'

export class DraftSession {
  #history: DraftHistory = $state.raw(undefined as never)
  /** Why it could not be kept; '' where it is. */
  fault = $state('')
  readonly name: string
  readonly share = new DraftWindow('import', IMPORT_KEY)
  readonly #keeper: DraftKeeper<SyllabusImport>

  /** `known`: the draft whose place it takes. */
  constructor(name: string, tree: DraftTree, known: SyllabusImport | undefined) {
    this.name = name
    this.#history = beginHistory(tree)
    this.share.begin(known)
    this.#keeper = keepDrafts<SyllabusImport>((kept) => this.share.save(kept), {
      onkept: () => (this.fault = ''),
      onfault: (error) => (this.fault = error instanceof Error ? error.message : String(error)),
    })
    this.#keeper.changed(this.#now)
  }

  get tree(): DraftTree {
    return this.#history.tree
  }
  get canUndo(): boolean {
    return this.#history.past.length > 0
  }
  get canRedo(): boolean {
    return this.#history.future.length > 0
  }

  change(tree: DraftTree): boolean {
    if (tree === this.tree) return false
    this.#to(step(this.#history, tree))
    return true
  }
  undo(): void {
    this.#to(undo(this.#history))
  }
  redo(): void {
    this.#to(redo(this.#history))
  }

  /** Of two drafts. What is not taken is set aside; the other one is taken as a step that can be taken back. */
  choose(which: 'mine' | 'theirs'): void {
    const theirs = this.share.other
    if (!theirs) return
    this.share.chosen(which === 'mine' ? theirs : this.#now)
    if (which === 'theirs') this.change(theirs.tree)
    this.#keeper.changed(this.#now)
  }

  keepNow(): Promise<void> {
    return this.#keeper.keepNow()
  }

  /** It is a syllabus now, or was thrown away. */
  async end(): Promise<void> {
    await this.#keeper.stop()
    await this.share.end(this.#now).catch(() => undefined)
    this.share.close()
  }

  get #now(): SyllabusImport {
    return { schema: 1, id: 'draft', name: this.name, tree: this.tree, savedAtMs: Date.now() }
  }

  #to(history: DraftHistory): void {
    this.#history = history
    this.#keeper.changed(this.#now)
  }
}
