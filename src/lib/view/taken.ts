import type { Check, Settings } from '../recall'

/** The shipped syllabi that somebody works with: those they took; until they chose any, those they have checked. */
export const takenIds = (
  { syllabusIds }: Pick<Settings, 'syllabusIds'>,
  checks: readonly Pick<Check, 'syllabusId'>[],
): readonly string[] => syllabusIds ?? [...new Set(checks.map(({ syllabusId }) => syllabusId))]
