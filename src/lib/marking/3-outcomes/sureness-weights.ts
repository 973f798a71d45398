/** Made by src/cli/calibrate.ts; not edited by hand. README.md in this folder says from what. */
export const BIAS = -0.71255
/** One for each name of EVIDENCE. */
export const WEIGHTS: readonly number[] = [
  -2.75698, 1.84881, 1.48361, 0.0474876, -0.0765934, 0.526939, 0.142666, -0.209725, 0.84373,
  0.475908, -0.335825, -1.80719, 0.286023, -1.0293, 0.560729, -0.0677552, 0.112284, 2.85148,
  -3.25598, -0.412959, 0.280363, 1.25786, -0.499758, 0.0598995, 0.161848, 0.992916, -0.701671,
]
/** Where one of several reference answers is enough: for their binary logarithm, and once. */
export const ALTERNATIVES = { many: -0.649413, several: -0.176087 } as const
/** From this sureness on a short answer is called correct. */
export const CORRECT = 0.38
