/**
 * An id made from a title: small letters and figures of any script with hyphens between; accents of Latin letters
 * go. '' where the title has neither letter nor figure. The same on every machine: no locale is asked.
 */
export function topicId(title: string): string {
  return title
    .normalize('NFKD')
    .replace(/(\p{Script=Latin})\p{M}+/gu, '$1')
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
}
