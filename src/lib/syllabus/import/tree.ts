/** Blocks -> a draft, with what its user should look at. */
import { draftLines, withoutTier } from './structure'
import { doubleRefs } from './problems'
import {
  MOST_LINES,
  placeWords,
  type Block,
  type DraftLine,
  type DraftRead,
  type DraftWarning,
} from './types'

const TASK =
  /^(?:describe|explain|state|name|list|give|outline|define|identify|discuss|compare|evaluate|analyse|suggest|calculate|understand|know|recall|recognise|be able to)\b/i

/** `title` is used where the blocks do not begin with one of their own. */
export function treeOf(
  blocks: readonly Block[],
  title: string,
  warnings: readonly DraftWarning[] = [],
): DraftRead {
  const { own, rest } = ownTitle(blocks.map(withoutTier))
  return treeFrom(draftLines(rest), own ?? title, warnings)
}

export function treeFrom(
  lines: readonly DraftLine[],
  title: string,
  warnings: readonly DraftWarning[],
  note?: string,
): DraftRead {
  if (lines.length > MOST_LINES) {
    const place = lines[MOST_LINES]?.place
    return {
      ok: false,
      fault: `More than ${MOST_LINES} lines are too many for one syllabus${place ? ` (they end at ${placeWords(place)})` : ''}. Bring one subject, or fewer pages, at a time.`,
      ...(place ? { place } : {}),
    }
  }
  const clean = lines.map(oneLine).filter(({ text }) => text !== '')
  if (!clean.some(({ role }) => role === 'point'))
    return {
      ok: false,
      fault:
        'No points were found: nothing here reads as a text, a list or a table. Paste the points instead, each on a line of its own.',
    }
  const tree = {
    title: title.replace(/\s+/g, ' ').trim().slice(0, 150) || 'My syllabus',
    ...(note === undefined ? {} : { note }),
    lines: clean,
  }
  return { ok: true, tree: { ...tree, warnings: [...warnings, ...toLookAt(clean)] } }
}

/** A file has no characters that steer a printer; a lone half of a pair cannot be written. */
export const cleanText = (text: string): string =>
  text
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, ' ')
    // eslint-disable-next-line no-control-regex
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\ufeff\ufffd\ufffe\uffff]/g, ' ')
    .trim()

const oneLine = (line: DraftLine): DraftLine => ({
  ...line,
  ref: cleanText(line.ref).replace(/\s+/g, ' ').slice(0, 150),
  text: cleanText(line.text),
})

/** The first heading is the title where no other stands as high. */
function ownTitle(blocks: readonly Block[]): { own?: string; rest: readonly Block[] } {
  const first = blocks.find(({ out }) => out === undefined)
  if (first?.as !== 'heading' || first.mark) return { rest: blocks }
  const others = blocks.filter((block) => block.as === 'heading' && block !== first)
  if (others.length === 0 || others.some(({ level }) => level <= first.level))
    return { rest: blocks }
  return { own: first.text, rest: blocks.filter((block) => block !== first) }
}

function toLookAt(lines: readonly DraftLine[]): DraftWarning[] {
  const points = lines.filter(({ role }) => role === 'point')
  const doubles = doubleRefs(lines).map(({ ref, line }) => ({
    message: `The number ${ref} stands here a second time.`,
    ...(line.place ? { place: line.place } : {}),
  }))
  const counted = points.filter((line) => line.counted).length
  const tasks = points.filter(({ text }) => TASK.test(text)).length
  return [
    ...doubles.slice(0, 50),
    ...(counted > 0
      ? [
          {
            message: `${counted} of ${points.length} points had no number of their own and were counted here.`,
          },
        ]
      : []),
    ...(tasks > 0
      ? [
          {
            message: `${tasks} of ${points.length} points say what to do (“describe …”), not what the answer is. A page can only be held against the answer: write it in, here or in the editor.`,
          },
        ]
      : []),
  ]
}
