/** Made by src/cli/calibrate.ts; not edited by hand. README.md in this folder says from what. */
export const BIAS = -0.705782
/** One for each name of EVIDENCE. */
export const WEIGHTS: readonly number[] = [
  -2.50986, 1.81243, 1.60205, -0.0299423, -0.146056, 0.634094, 0.146523, -0.256509, 0.888349,
  0.477303, -0.575989, -1.78542, 0.316285, -1.17651, 0.545257, -0.166428, 0.0943301, 3.01597,
  -3.20574, -0.408949, 0.228148, 1.04449, -0.478858, -0.316172, 0.315823, 1.17568, -0.735281,
]
/** Where one of several reference answers is enough: for their binary logarithm, and once. */
export const ALTERNATIVES = { many: -0.621035, several: -0.18323 } as const
/** From this sureness on a short answer is called correct. */
export const CORRECT = 0.4
