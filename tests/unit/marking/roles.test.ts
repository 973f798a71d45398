/** Rule 10: who does what to whom. Sentences of our own. */
import { expect, test } from 'vitest'
import { mark } from '../../../src/lib/marking'
import { topicFrom } from './topic'

const SENDS = {
  text: 'The harbour master sends a notice to the skipper.',
  ideas: ['harbour master + sends + notice + skipper'],
}
const DEEPER = {
  text: 'The lagoon is deeper than the bay.',
  ideas: ['lagoon', 'deeper', 'bay'],
}
const BECAUSE = {
  text: 'The boats swing to face the harbour mouth because of the evening breeze.',
  ideas: ['boats', 'face + harbour mouth', 'evening breeze'],
}

test.each([
  [SENDS, 'The harbour master sends the skipper a notice.', 'full'],
  [SENDS, 'The skipper sends a notice to the harbour master.', 'contradicted'],
  [SENDS, 'A notice is sent to the skipper by the harbour master.', 'full'],
  [DEEPER, 'The lagoon is deeper than the bay.', 'full'],
  [DEEPER, 'The bay is deeper than the lagoon.', 'contradicted'],
  [DEEPER, 'The bay is shallower than the lagoon.', 'full'],
  [BECAUSE, 'The evening breeze makes the boats face the harbour mouth.', 'full'],
  [BECAUSE, 'Boats face the harbour mouth, due to the evening breeze.', 'full'],
])('$text “%s” is %s', (point, says, expected) => {
  const [first] = mark(topicFrom('The harbour', [point]), `${says} It was cold.`).points
  expect(first?.outcome).toBe(expected)
})
