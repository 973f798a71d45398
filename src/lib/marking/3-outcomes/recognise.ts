import { doubted } from './doubt'
import type { Case, Judgement } from './judge'
import { alike } from './learning'

/** A statement that somebody gave the point for, or refused it. */
export interface MarkedWording {
  readonly text: string
  readonly credited: boolean
}

/** What was marked of each point, by its ref. A point learns only from its own. */
export type Learned = Readonly<Record<string, readonly MarkedWording[]>>

/** From this likeness on a statement is the same wording in all that tells. */
const SAME_WORDING = 0.8
/** What is left of the sureness of a wording that was refused before. */
const REFUSED = 0.3

/**
 * The judgement after what was marked before: an accepted wording says the point, a refused one is not enough and is offered for the
 * student to decide. A clash stands, whatever was accepted. Where a statement is as like to both, nothing changes.
 */
export function recognise(
  open: Case,
  judgement: Judgement,
  marked: readonly MarkedWording[],
): Judgement {
  if (marked.length === 0 || judgement.clash) return judgement
  return judgement.outcome === 'full'
    ? afterRefusals(open, judgement, marked)
    : afterAcceptance(open, judgement, marked)
}

function afterAcceptance(
  open: Case,
  judgement: Judgement,
  marked: readonly MarkedWording[],
): Judgement {
  const { page, carried } = open
  const hedged = doubted(page)
  for (const { index, from, start, end } of page.statements) {
    if (page.struck[from] === 2 || hedged.has(index)) continue
    const ends = carried[index] ? [end, page.statements[index + 1]!.end] : [end]
    for (const last of ends) {
      const { credited, refused } = likest(page.text.slice(start, last), marked)
      if (credited < SAME_WORDING || credited <= refused) continue
      const { nearest: _, ...rest } = judgement
      const sureness = Math.max(judgement.sureness, credited)
      return {
        ...rest,
        outcome: 'full',
        offered: false,
        sureness,
        learnt: 'accepted',
        accepted: index,
      }
    }
  }
  return judgement
}

function afterRefusals(
  { page }: Case,
  judgement: Judgement,
  marked: readonly MarkedWording[],
): Judgement {
  const { said, inOtherWords } = judgement
  const places = [...said.flatMap((o) => (o ? [o.statement] : [])), inOtherWords ?? []].flat()
  const used = [...new Set(places)].sort((a, b) => a - b)
  const [first] = used
  if (first === undefined) return judgement
  const text = page.text.slice(page.statements[first]!.start, page.statements[used.at(-1)!]!.end)
  const { credited, refused } = likest(text, marked)
  if (refused < SAME_WORDING || refused <= credited) return judgement
  const { inOtherWords: _, ...rest } = judgement
  return {
    ...rest,
    outcome: judgement.claims.length > 1 ? 'partial' : 'missed',
    nearest: first,
    offered: true,
    sureness: Math.min(judgement.sureness, REFUSED),
    learnt: 'refused',
  }
}

function likest(text: string, marked: readonly MarkedWording[]) {
  const most = (credited: boolean) =>
    Math.max(0, ...marked.filter((m) => m.credited === credited).map((m) => alike(m.text, text)))
  return { credited: most(true), refused: most(false) }
}
