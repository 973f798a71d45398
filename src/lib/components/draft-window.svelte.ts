/** One draft in one window: kept, told of other windows that have it open, and never written over by one of them. */
import {
  endDraft,
  keepDraft,
  sameWork,
  standingDraft,
  type DraftKind,
  type RecordOf,
  type Saving,
} from '$lib/store'
import { newId } from './new-id'
import { holdInWindow } from './one-window'

interface Message {
  readonly key: string
  readonly what: 'opened' | 'kept' | 'ended' | 'left'
}

export interface DraftWindowOptions<K extends DraftKind> {
  /**
   * Another window went on with the draft. Takes it over and gives true where nothing is on the page that was not kept;
   * otherwise the student is asked.
   */
  readonly onmoved?: (there: RecordOf[K]) => boolean
}

export class DraftWindow<K extends DraftKind> {
  /** What another window wrote, to be chosen between. */
  other: RecordOf[K] | undefined = $state.raw()
  /** The draft is open in another window. */
  elsewhere = $state(false)
  /** Another window has ended it: it was marked, put in use or thrown away there. */
  ended = $state(false)

  readonly #kind: K
  readonly #key: string
  readonly #window = newId()
  readonly #channel =
    typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('second-ink-drafts')
  readonly #letGo: () => void
  #known: RecordOf[K] | undefined
  /** Copies beside the draft that were found when it was opened, the one that is asked about first. */
  #beside: { readonly key: string; readonly record: RecordOf[K] }[] = []
  #settled: string[] = []
  #against: RecordOf[K][] = []

  constructor(kind: K, key: string, { onmoved }: DraftWindowOptions<K> = {}) {
    this.#kind = kind
    this.#key = key
    this.#letGo = holdInWindow(`draft ${key}`, () => (this.elsewhere = true))
    this.#channel?.addEventListener('message', ({ data }: MessageEvent<Message>) => {
      if (data.key !== key) return
      this.elsewhere = data.what === 'opened' || data.what === 'kept'
      if (data.what === 'ended') this.ended = true
      if (data.what === 'kept') void this.#look(onmoved)
    })
    this.#say('opened')
  }

  /** How this window is known to the store. */
  get saving(): Pick<Saving<K>, 'known' | 'window'> {
    return { known: this.#known, window: this.#window }
  }

  /** What is kept of the draft. What other windows left beside it is asked about. Rejects where it cannot be read. */
  async open(): Promise<RecordOf[K] | undefined> {
    const { record, beside } = await standingDraft(this.#kind, this.#key)
    this.#known = record
    this.#beside = beside.filter((copy) => !record || !sameWork(this.#kind, copy.record, record))
    this.other = this.#beside[0]?.record
    return record
  }

  /** For a draft that was read by other ways. */
  begin(known: RecordOf[K] | undefined): void {
    this.#known = known
  }

  /** Keeps the draft: in its place, or beside what another window put there, which is then asked about. */
  async save(record: RecordOf[K]): Promise<void> {
    const { known, window } = this.saving
    const [settled, against] = [this.#settled, this.#against]
    const other = await keepDraft(this.#kind, record, { known, window, settled, against })
    this.ended = false
    if (other) {
      this.other = other
      return
    }
    this.#known = record
    this.#settled = this.#settled.filter((key) => !settled.includes(key))
    this.#against = this.#against.filter((one) => !against.includes(one))
    this.#say('kept')
  }

  /** The student has chosen; what is saved next takes the place of both. `against` is set aside. */
  chosen(against: RecordOf[K] | undefined): void {
    const [first, ...rest] = this.#beside
    if (against) this.#against.push(against)
    if (first && first.record === this.other) {
      this.#settled.push(first.key)
      this.#beside = rest
      this.other = rest[0]?.record
    } else {
      this.#known = this.other
      this.other = first?.record
    }
  }

  /** Throws the draft away, as this window has it. */
  async end(record: RecordOf[K]): Promise<void> {
    await endDraft(this.#kind, record, this.saving)
    this.told()
  }

  /** The draft was ended by other ways. */
  told(): void {
    this.#known = undefined
    this.#say('ended')
  }

  close(): void {
    this.#say('left')
    this.#letGo()
    this.#channel?.close()
  }

  async #look(onmoved: DraftWindowOptions<K>['onmoved']): Promise<void> {
    const { record } = await standingDraft(this.#kind, this.#key)
    if (!record || (this.#known && sameWork(this.#kind, record, this.#known))) return
    // While there is a choice to make nothing on the page is replaced.
    if (this.other === undefined && onmoved?.(record)) this.#known = record
    else this.other = record
  }

  #say(what: Message['what']): void {
    try {
      this.#channel?.postMessage({ key: this.#key, what } satisfies Message)
    } catch {
      // It is closed: a last write after the page was left.
    }
  }
}
