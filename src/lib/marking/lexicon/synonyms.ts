export const synonyms = `
carry, transport, move
`
export const scienceSynonyms = `
`
