/** The log of exam questions while its page is open: what is logged, the entry that is typed, and the way back of the last change. */
import {
  emptyEntry,
  entryOf,
  isBlank,
  marksOf,
  readEntry,
  type Day,
  type EntryFault,
  type PaperEntry,
  type PaperQuestion,
  type TopicPlace,
} from '$lib/recall'
import { changePapers, entryKey, listEntries, listPapers, removeEntry } from '$lib/store'
import { changeWords, marksWords } from '$lib/view/papers'
import { keepDrafts } from '../draft-keeper'
import { DraftWindow } from '../draft-window.svelte'
import { messageOf } from '../message-of'
import { newId } from '../new-id'
import { readNow } from '../now'

type Change = Parameters<typeof changePapers>[0]
/** How the last change is taken back: a change of the log, or the entry that was cleared. */
type Back = { readonly change: Change } | { readonly entry: PaperEntry }

/** What the cursor goes to, as an element's id. */
type Focus = string | undefined

export class LogSession {
  papers: readonly PaperQuestion[] = $state.raw([])
  unreadable = $state(0)
  /** What is being typed. */
  entry: PaperEntry | undefined = $state.raw()
  /** Fields that stand in the way of logging it; told once it was tried. */
  faults: readonly EntryFault[] = $state.raw([])
  /** Why the entry could not be logged. */
  entryFault = $state('')
  /** Why what is typed is not kept; '' where it is. */
  unkept = $state('')
  /** The entry in this window and others. */
  share: DraftWindow<'entry'> | undefined = $state.raw()
  /** Why anything else failed. */
  fault = $state('')
  /** For a live region: what was just done. */
  told = $state('')
  readonly today: Day
  readonly #only: TopicPlace | undefined
  #back: Back | undefined = $state.raw()
  readonly #keeper = keepDrafts<PaperEntry>(async (one) => this.share?.save(one), {
    onkept: () => (this.unkept = ''),
    onfault: (error) => (this.unkept = messageOf(error)),
  })

  /** `only` is the topic that a new entry begins with. */
  constructor(today: Day, only: TopicPlace | undefined) {
    this.today = today
    this.#only = only
  }

  get canTakeBack(): boolean {
    return this.#back !== undefined
  }

  /** Reads the log, and the entry that was left half-written. */
  async open(): Promise<void> {
    try {
      await this.#read()
      const [latest] = (await listEntries()).filter(
        ({ id }) => id === 'new' || this.papers.some((paper) => paper.id === id),
      )
      if (latest) await this.#show(latest)
    } catch (error) {
      this.fault = messageOf(error)
    }
  }

  keepNow(): Promise<void> {
    return this.#keeper.keepNow()
  }

  close(): void {
    void this.keepNow()
    this.share?.close()
  }

  /** Of two windows' entries. */
  choose(which: 'mine' | 'theirs'): void {
    const theirs = this.share?.other
    if (!this.share || !theirs || !this.entry) return
    this.share.chosen(which === 'mine' ? theirs : this.entry)
    this.typed(which === 'mine' ? this.entry : theirs)
  }

  typed(next: PaperEntry): void {
    const entry = { ...next, savedAtMs: readNow().nowMs }
    this.entry = entry
    // What was told stays told until it is put right.
    if (this.faults.length > 0) {
      const again = readEntry(entry, this.today)
      this.faults = again.ok ? [] : again.faults
    }
    this.#keeper.changed(entry)
  }

  async begin(): Promise<Focus> {
    await this.keepNow()
    const kept = await listEntries().catch(() => [])
    const entry = kept.find(({ id }) => id === 'new') ?? emptyEntry(this.today, newId(), this.#only)
    await this.#show(entry)
    this.faults = []
    return entry.source === '' ? 'entry-source' : `${entry.rows[0]?.key}-question`
  }

  async edit(paper: PaperQuestion): Promise<Focus> {
    await this.keepNow()
    await this.#show(entryOf(paper))
    this.faults = []
    this.entryFault = ''
    return `${paper.id}-won`
  }

  /** What stands in its way is told at once. */
  async log(): Promise<Focus> {
    if (!this.entry) return undefined
    const { id } = this.entry
    const result = readEntry(this.entry, this.today)
    this.faults = result.ok ? [] : result.faults
    this.entryFault = ''
    return result.ok ? this.#keep(id, result.papers) : undefined
  }

  async #keep(id: string, made: readonly PaperQuestion[]): Promise<Focus> {
    const before = this.papers.filter((paper) => made.some((one) => one.id === paper.id))
    const words = changeWords(made, this.today)
    try {
      await this.keepNow()
      await this.#change(
        { put: made, entry: id },
        id === 'new' ? `Logged: ${words}, ${marksWords(marksOf(made))}.` : `Changed: ${words}.`,
        before.length > 0 ? { put: before } : { remove: made.map((one) => one.id) },
      )
      this.entry = undefined
      this.share?.told()
      return 'told'
    } catch (error) {
      this.entryFault = `${messageOf(error)} Nothing was logged; what you typed is still here.`
      return undefined
    }
  }

  /** Leaves the entry: a new one is cleared, with a way back; a logged question stays as it was. */
  async leave(): Promise<Focus> {
    if (!this.entry) return undefined
    const left = this.entry
    const isNew = left.id === 'new'
    this.entry = undefined
    this.faults = []
    this.entryFault = ''
    try {
      await this.keepNow()
      await removeEntry(left.id)
      this.share?.told()
      this.told = isNew ? 'The entry was cleared.' : 'It stays as it was.'
      this.#back = isNew && !isBlank(left) ? { entry: left } : undefined
    } catch (error) {
      this.fault = messageOf(error)
    }
    return isNew ? 'told' : `change-${left.id}`
  }

  async remove(paper: PaperQuestion): Promise<Focus> {
    try {
      await this.#change({ remove: [paper.id] }, `Removed: ${changeWords([paper], this.today)}.`, {
        put: [paper],
      })
    } catch (error) {
      this.told = ''
      this.fault = messageOf(error)
    }
    return 'told'
  }

  async takeBack(): Promise<Focus> {
    const back = this.#back
    this.fault = ''
    try {
      if (back && 'entry' in back) {
        await this.#show(back.entry)
        this.typed(back.entry)
        this.#back = undefined
        this.told = 'The entry is back.'
      } else if (back) await this.#change(back.change, 'Taken back: the log is as it was.')
    } catch (error) {
      this.fault = messageOf(error)
    }
    return 'told'
  }

  /** Something that changes nothing was done, and cannot be taken back. */
  tell(says: string): void {
    this.told = says
    this.#back = undefined
  }

  /** One change of the log: kept, read again, told, and ready to be taken back. */
  async #change(change: Change, says: string, back?: Change): Promise<void> {
    await changePapers(change)
    await this.#read()
    this.#back = back && { change: back }
    this.told = says
  }

  /** Another entry is in the form; the one before is kept by then. */
  async #show(next: PaperEntry): Promise<void> {
    this.share?.close()
    this.share = new DraftWindow('entry', entryKey(next.id))
    // Where it cannot be read now, the first thing that is typed says so.
    await this.share.open().catch(() => undefined)
    this.entry = next
  }

  async #read(): Promise<void> {
    const kept = await listPapers()
    this.papers = kept.papers
    this.unreadable = kept.unreadable
  }
}
