/**
 * The path of the hairline from a point in the margin to its words on the page, in the coordinates of `script`: under
 * the words, along the space between the lines to the margin line, and along that to the point, so that it crosses no
 * text. Empty where one of the two is not there.
 */
export function tieLine(script: HTMLElement, ref: string): string {
  const note = script.querySelector(`[data-point="${CSS.escape(ref)}"]`)
  const words = [...script.querySelectorAll<HTMLElement>('.tied[data-text], .caret.tied')]
  const last = words.at(-1)
  const under = last && [...last.getClientRects()].at(-1)
  if (!note || !under) return ''

  const origin = script.getBoundingClientRect()
  const beside = note.getBoundingClientRect()
  const x = (at: number) => Math.round(at - origin.left) + 0.5
  const y = (at: number) => Math.round(at - origin.top) + 0.5
  const margin = (origin.right + beside.left) / 2
  const foot = under.bottom + 3
  return `M${x(under.right)} ${y(foot)}H${x(margin)}V${y(beside.top + 14)}H${x(beside.left)}`
}
