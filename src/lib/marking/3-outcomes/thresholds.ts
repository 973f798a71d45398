/** From this strength on an idea is said. */
export const SAID = 0.7
/** From this strength on a turned-round idea or a rejected statement clashes. */
export const CLASHES = 0.8
