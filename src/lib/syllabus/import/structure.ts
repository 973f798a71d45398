/** Blocks -> the lines of a draft: which headings are topics, which texts are points, and the ref of each. */
import { sentencesOf } from './sentences'
import { MOST_LINES, type Block, type DraftLine, type Role } from './types'

/** A text that leads its items in, with what stands before the refs of the items. */
interface Lead {
  readonly ref: string
  /** Put in front of each item; '' where it says nothing of its own. */
  readonly words: string
  readonly depth: number
  count: number
}

const NO_WORDS_OF_ITS_OWN =
  /^(?:(?:the )?(?:students?|candidates?|learners?|pupils?|you)\b.*(?:should|must|will|need|are expected|can)\b.*|content|by the end\b.*|including|objectives?|learning outcomes?|key points?|to include)\W*$/i

type Line = Omit<DraftLine, 'key'>

/** Says for whom the points below it are, within a topic. */
const TIER =
  /^\W{0,2}(?:higher|foundation|extended|core|HT|HL|AS|A[- ]level)(?: tier| level)? only\W{0,2}$/i

/** Gives at most MOST_LINES + 1 lines: one too many says that there are more. */
export function draftLines(blocks: readonly Block[]): DraftLine[] {
  const promoted = withNumberedHeadings(blocks)
  const lines: Line[] = []
  let topics = 0
  for (let i = 0; i < promoted.length && lines.length <= MOST_LINES;) {
    const end = sectionEnd(promoted, i)
    const head = promoted[i]!.as === 'heading' ? promoted[i]! : undefined
    const body = promoted.slice(head ? i + 1 : i, end)
    if (head) {
      const bare = !body.some(({ out }) => out === undefined)
      if (!bare) topics += 1
      lines.push(topicLine(head, bare))
    } else topics += 1
    const local = head?.mark?.ref || String(Math.max(topics, 1))
    lines.push(...pointLines(body, local, head !== undefined))
    i = end
  }
  return lines.slice(0, MOST_LINES + 1).map((line, key) => ({ ...line, key }))
}

/** Such a line parts no topic. */
export const withoutTier = (block: Block): Block =>
  block.mark === undefined && TIER.test(block.text)
    ? { ...block, as: 'text', level: 0, out: 'It says for whom the points below are' }
    : block

function sectionEnd(blocks: readonly Block[], from: number): number {
  let end = from + 1
  while (end < blocks.length && blocks[end]!.as !== 'heading') end += 1
  return end
}

const topicLine = ({ text, mark, level, place }: Block, bare: boolean): Line => ({
  role: bare ? 'out' : 'topic',
  ref: mark?.ref ?? '',
  text,
  depth: level,
  place,
  ...(bare ? { why: 'A heading with no points of its own' } : {}),
})

/** Where numbers alone say what is above what: "3.1 Drift" above "3.1.1 Waves reach …" is a heading. */
function withNumberedHeadings(blocks: readonly Block[]): readonly Block[] {
  return blocks.map((block, i) => {
    const next = blocks[i + 1]
    const { mark, text } = block
    if (block.as === 'heading' || block.whole || block.out || mark?.style !== 'number') return block
    if (text === '' || text.length > 100 || /[.:;,…]$/.test(text)) return block
    const below = next?.mark?.style === 'number' && next.mark.ref.startsWith(`${mark.ref}.`)
    return below ? { ...block, as: 'heading' as const, level: mark.ref.split('.').length } : block
  })
}

function pointLines(body: readonly Block[], local: string, titled: boolean): Line[] {
  const marked = body.some(({ mark, out }) => mark !== undefined && out === undefined)
  const lines: Line[] = []
  const leads: Lead[] = []
  const top: Lead = { ref: local, words: '', depth: -1, count: 0 }
  body.forEach((block, i) => {
    const { text, place } = block
    if (text === '') return
    if (block.out !== undefined) return void lines.push(left(block, block.out))
    const depth = depthOf(block)
    while (leads.length > 0 && leads.at(-1)!.depth >= depth) leads.pop()
    const lead = leads.at(-1) ?? top
    const next = body.slice(i + 1).find(({ out }) => out === undefined)
    const leadsIn = next?.mark !== undefined && depthOf(next) > depth
    if (!block.mark) {
      if (leadsIn && /[:…]$|\.\.\.$/.test(text)) {
        leads.push({ ref: lead.ref, words: wordsOf('', text), depth, count: lead.count })
        lines.push(left(block, 'It leads in the points below'))
      } else if (marked && titled && !block.whole) {
        lines.push(left(block, 'It stands beside the numbered points'))
      } else {
        const parts = block.whole ? [text] : sentencesOf(text)
        for (const part of parts) {
          lead.count += 1
          lines.push({
            role: 'point',
            ref: `${lead.ref}.${lead.count}`,
            text: part,
            counted: true,
            place,
          })
        }
      }
      return
    }
    const { ref, counted } = refOf(block, lead, titled)
    const whole = block.whole ? text : wordsOf(lead.words, text)
    if (leadsIn && !block.whole && !/[.!?]$/.test(text)) {
      leads.push({ ref, words: whole, depth, count: 0 })
      lines.push(left({ ...block, text: whole }, 'It leads in the points below', ref))
      return
    }
    if (leadsIn) leads.push({ ref, words: '', depth, count: 0 })
    lines.push({ role: 'point', ref, text: whole, place, ...(counted ? { counted } : {}) })
  })
  return lines
}

const left = ({ text, place }: Block, why: string, ref = ''): Line => ({
  role: 'out' as Role,
  ref,
  text,
  place,
  why,
})

/** Numbers above letters above roman numerals; bullets below whatever leads them in. */
function depthOf({ mark, level }: Block): number {
  if (!mark) return 0
  const own = Math.min(level, 9)
  if (mark.style === 'bullet') return 40 + own
  if (mark.style === 'roman') return 30 + own
  return mark.style === 'letter' || mark.ref.includes('(') ? 20 + own : 10 + own
}

function refOf(
  { mark }: Block,
  lead: Lead,
  titled: boolean,
): { readonly ref: string; readonly counted?: boolean } {
  if (!mark) return { ref: '' }
  lead.count += 1
  if (mark.style === 'bullet') return { ref: `${lead.ref}.${lead.count}`, counted: true }
  if (mark.style !== 'number') return { ref: `${lead.ref}(${mark.ref})` }
  // A bare 1, 2, 3 begins anew under each heading: the heading's number makes it unique.
  const bare = /^\d+$/.test(mark.ref)
  return bare && (titled || lead.depth >= 0)
    ? { ref: `${lead.ref}.${mark.ref}`, counted: true }
    : { ref: mark.ref }
}

function wordsOf(lead: string, text: string): string {
  const own = NO_WORDS_OF_ITS_OWN.test(text) ? '' : text
  return lead === '' ? own : `${lead} ${text}`
}
