/** A mistake inside one short text of a syllabus: an idea, a wording, a value, an equation. */
export class NotationError extends Error {
  override readonly name = 'NotationError'

  /**
   * @param message What was found and what was expected, one or two sentences.
   * @param offset UTF-16 offset into the text that was read; its length where something is missing at the end.
   */
  constructor(
    message: string,
    readonly offset: number,
  ) {
    super(message)
  }
}
