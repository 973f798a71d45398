/** What is said of the points of a check, found by the point's ref. */
import type { decidedOutcomes } from '$lib/recall'
import { outcomeWords } from '$lib/view/sentences'

export const marksByRef = <T extends { readonly ref: string }>(
  of: { readonly points: readonly T[] } | undefined,
): ReadonlyMap<string, T> => new Map(of?.points.map((point) => [point.ref, point]))

/** The marker's and the pupil's marks of each point, in words. */
export const wordsOfOthers = (
  outcomes: ReturnType<typeof decidedOutcomes>,
): ReadonlyMap<string, string> =>
  new Map(
    outcomes.map(({ ref, marker, outcome, by }) => [
      ref,
      `Marker: ${outcomeWords(marker)}.${by === 'student' ? ` Pupil: ${outcomeWords(outcome)}.` : ''}`,
    ]),
  )
