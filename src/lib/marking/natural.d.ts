/**
 * natural is imported by module path: its root module pulls in database drivers, which cannot go to a
 * browser. Its own types exist for its folders only, so the leaves used here are declared once.
 */
declare module 'natural/lib/natural/stemmers/porter_stemmer.js' {
  const stemmer: { stem(word: string): string }
  export default stemmer
}
declare module 'natural/lib/natural/phonetics/double_metaphone.js' {
  export default class DoubleMetaphone {
    /** The primary and the secondary code of a word. */
    process(word: string): [string, string]
  }
}
declare module 'natural/lib/natural/distance/levenshtein_distance.js' {
  const distance: {
    DamerauLevenshteinDistance(
      one: string,
      two: string,
      options?: { restricted?: boolean; insertion_cost?: number; deletion_cost?: number },
    ): number
  }
  export default distance
}
declare module 'natural/lib/natural/inflectors/noun_inflector.js' {
  export default class NounInflector {
    singularize(word: string): string
    pluralize(word: string): string
  }
}
