/** The lines of a draft as its page shows them: which is open, what is folded up, what stands in the way, what was done last. */
import {
  joinLine,
  moveLine,
  problemsOf,
  putBack,
  setRole,
  setText,
  splitLine,
  type DraftLine,
  type DraftTree,
} from '$lib/syllabus/import'
import type { DraftSession } from './draft-session.svelte'
import { byLine, grouped, newLine, type LineGroup } from './line-groups'

/** More are folded up, topic by topic: a page of thousands of lines would be slow. */
const ALL_SHOWN = 150
const AT_ONCE = 200

export class DraftLines {
  openKey: number | undefined = $state()
  reached: number | undefined = $state()
  unfolded: number | undefined = $state()
  more = $state(AT_ONCE)
  outShown = $state(true)
  /** For a live region: what was just done. */
  told = $state('')
  /** Why it could not be kept as a syllabus. */
  fault = $state('')
  readonly #session: DraftSession

  readonly problems = $derived.by(() => problemsOf(this.#session.tree))
  readonly problemOf = $derived.by(() => byLine(this.problems))
  readonly groups = $derived.by(() => grouped(this.#session.tree.lines))
  readonly folds = $derived.by(
    () => this.#session.tree.lines.length > ALL_SHOWN && this.groups.length > 1,
  )
  readonly firstKey = $derived.by(() => this.reached ?? this.#session.tree.lines[0]?.key)

  constructor(session: DraftSession) {
    this.#session = session
  }

  shown(group: LineGroup): readonly DraftLine[] {
    const wanted =
      this.folds && this.unfolded !== group.key
        ? group.lines.slice(0, group.head ? 1 : 0)
        : group.lines
    return wanted.filter(
      (line) => this.outShown || line.role !== 'out' || line.key === this.openKey,
    )
  }

  fold(group: LineGroup): void {
    this.unfolded = this.unfolded === group.key ? undefined : group.key
    this.more = AT_ONCE
  }

  showMore(): void {
    this.more += AT_ONCE
  }

  open(key: number): void {
    this.openKey = key
    this.reached = key
  }

  /** Opens a line wherever it is folded up. */
  show(key: number): void {
    const group = this.groups.find(({ lines }) => lines.some((line) => line.key === key))
    this.unfolded = group?.key
    const at = group?.lines.findIndex((line) => line.key === key) ?? 0
    this.more = Math.max(this.more, at + 1)
    this.open(key)
  }

  change(next: DraftTree, what: string): void {
    this.fault = ''
    this.told = this.#session.change(next) ? what : 'That is not possible here.'
  }

  takeBack(forward: boolean): void {
    if (forward) this.#session.redo()
    else this.#session.undo()
    this.openKey = undefined
    this.told = forward ? 'Done again.' : 'Taken back.'
  }

  setRole(line: DraftLine, role: Parameters<typeof setRole>[2] | 'back'): void {
    const { tree } = this.#session
    const next = role === 'back' ? putBack(tree, line.key) : setRole(tree, line.key, role)
    const is = next.lines.find(({ key }) => key === line.key)?.role
    this.change(next, is === 'out' ? 'Left out.' : `It is a ${is} now.`)
  }

  move(line: DraftLine, by: -1 | 1): void {
    this.change(moveLine(this.#session.tree, line.key, by), by === -1 ? 'Moved up.' : 'Moved down.')
  }

  split(line: DraftLine, text: string, offset: number): void {
    const { tree } = this.#session
    // Spaces in front are taken off before the text is parted.
    const at = offset - (text.length - text.trimStart().length)
    this.change(splitLine(setText(tree, line.key, text), line.key, at), 'Parted in two.')
    const made = newLine(tree.lines, this.#session.tree.lines)
    if (made) this.openKey = made.key
  }

  /** Gives the line that it was joined to. */
  join(line: DraftLine, text: string): number | undefined {
    const { tree } = this.#session
    const i = tree.lines.findIndex(({ key }) => key === line.key)
    const above = tree.lines
      .slice(0, i)
      .findLast(({ role }) => role !== 'out' || line.role === 'out')
    this.change(joinLine(setText(tree, line.key, text), line.key), 'Joined to the line above.')
    this.openKey = undefined
    return above?.key
  }
}
