/** From this strength on an idea is said. */
export const SAID = 0.7
/** The same for a drafted idea. */
export const SAID_LOOSE = 0.6
/** From this share of its words on a drafted point is full. */
export const DRAFT_FULL = 0.65
/** From this strength on a turned-round idea or a rejected statement clashes. */
export const CLASHES = 0.8
/** The same for a drafted idea. */
export const CLASHES_LOOSE = 0.7
/** What is left of the strength of an idea that the student doubts: below `SAID`. */
export const DOUBTED = 0.55
