export const spellings = `
colour=color
`
