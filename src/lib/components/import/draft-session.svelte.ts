/** A draft while it is put right: every step can be taken back, and is kept soon after it was made. */
import { removeImport, saveImport, type SyllabusImport } from '$lib/store'
import {
  beginHistory,
  redo,
  step,
  undo,
  type DraftHistory,
  type DraftTree,
} from '$lib/syllabus/import'

const EVERY_MS = 300

export class DraftSession {
  #history: DraftHistory = $state.raw(undefined as never)
  /** Why it could not be kept; '' where it is. */
  fault = $state('')
  readonly name: string
  #timer: ReturnType<typeof setTimeout> | undefined
  #ended = false

  constructor(name: string, tree: DraftTree) {
    this.name = name
    this.#history = beginHistory(tree)
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

  #to(history: DraftHistory): void {
    this.#history = history
    this.#timer ??= setTimeout(() => void this.keepNow(), EVERY_MS)
  }

  async keepNow(): Promise<void> {
    clearTimeout(this.#timer)
    this.#timer = undefined
    if (this.#ended) return
    const kept: SyllabusImport = {
      schema: 1,
      id: 'draft',
      name: this.name,
      tree: this.tree,
      savedAtMs: Date.now(),
    }
    try {
      await saveImport(kept)
      this.fault = ''
    } catch (error) {
      this.fault = error instanceof Error ? error.message : String(error)
    }
  }

  /** It is a syllabus now, or was thrown away. */
  async end(): Promise<void> {
    this.#ended = true
    clearTimeout(this.#timer)
    await removeImport().catch(() => undefined)
  }
}
