export const opposites = `
increase, rise, go up, grow, more, higher, bigger, larger, greater, up, high, big, large, ^ >< decrease, fall, go down, shrink, less, fewer, lower, smaller, down, low, small, v
faster, quicker, fast, speed up >< slower, slow, slow down
strong, stronger >< weak, weaker
above >< below
`
