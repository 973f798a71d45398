export const isKnownWord = (word: string): boolean => (void word, false)
