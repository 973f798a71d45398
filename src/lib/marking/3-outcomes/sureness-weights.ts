/** Made by src/cli/calibrate.ts; not edited by hand. README.md in this folder says from what. */
export const BIAS = -0.764715
/** One for each name of EVIDENCE. */
export const WEIGHTS: readonly number[] = [
  -2.3696, 1.87757, 1.52536, 0.0301094, -0.152975, 0.650859, 0.0839624, -0.242187, 0.93954,
  0.390304, -0.470389, -1.8068, 0.343755, -1.22039, 0.538015, -0.160757, 0.0880056, 2.85738,
  -3.15851, -0.360758, 0.265733, 1.0519, -0.477769, -0.252236, 0.252683, 1.09549, -0.718593,
]
/** Where one of several reference answers is enough: for their binary logarithm, and once. */
export const ALTERNATIVES = { many: -0.624005, several: -0.188934 } as const
/** From this sureness on a short answer is called correct. */
export const CORRECT = 0.4
