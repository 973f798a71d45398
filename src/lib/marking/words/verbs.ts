import nlp from 'compromise/two'

const model = nlp.model() as {
  one: { lexicon: Readonly<Record<string, string | readonly string[]>> }
}

/** Does compromise's lexicon know the word as a form of a verb, and only a form that cannot be a plain noun? */
export function isVerb(word: string): boolean {
  if (/n't$/.test(word)) return true
  const tag = Object.hasOwn(model.one.lexicon, word) ? model.one.lexicon[word] : undefined
  const tags = typeof tag === 'string' ? [tag] : (tag ?? [])
  return tags.some((t) =>
    /^(?:Copula|Modal|Auxiliary|PastTense|PresentTense|Gerund|Infinitive|Participle)$/.test(t),
  )
}
