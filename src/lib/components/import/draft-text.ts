/** A draft as text that can be brought again: what is offered where it cannot be kept. */
import type { DraftTree } from '$lib/syllabus/import'

export const draftText = ({ title, lines }: DraftTree): string =>
  [
    `# ${title}`,
    ...lines
      .filter(({ role }) => role !== 'out')
      .map(({ role, ref, text }) => {
        const words = `${ref} ${text}`.trim()
        return role === 'topic' ? `\n## ${words}\n` : `- ${words}`
      }),
    '',
  ].join('\n')
