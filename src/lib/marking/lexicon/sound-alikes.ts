export const soundAlikes = `
beach=beech
`
