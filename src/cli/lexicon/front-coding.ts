/**
 * Each word as one capital for how many letters it shares with the word before (A: none), then the rest, then what `more` says of it.
 * `sorted`: lower-case words.
 */
export function frontCoded(
  sorted: readonly string[],
  more: (word: string) => string = () => '',
): string {
  let before = ''
  return sorted
    .map((word) => {
      let shared = 0
      while (shared < before.length && shared < 25 && before[shared] === word[shared]) shared += 1
      before = word
      return String.fromCharCode(65 + shared) + word.slice(shared) + more(word)
    })
    .join('')
}
