export const shorthand = `
b/c = because
`
