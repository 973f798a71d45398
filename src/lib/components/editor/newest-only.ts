/** Work that takes its time, asked for again and again: one at a time, and of those that wait only the newest. */
export function newestOnly<Q, A>(
  work: (question: Q) => Promise<A>,
  ondone: (answer: A) => void,
): (question: Q) => void {
  let running = false
  let waiting: { readonly question: Q } | undefined

  const next = () => {
    running = false
    if (!waiting) return
    const { question } = waiting
    waiting = undefined
    ask(question)
  }
  function ask(question: Q): void {
    if (running) {
      waiting = { question }
      return
    }
    running = true
    // What fails is answered by nothing; whoever asks next is served all the same.
    work(question)
      .then(ondone, () => undefined)
      .then(next, next)
  }
  return ask
}
