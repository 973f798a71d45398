/** Made by src/cli/calibrate.ts; not edited by hand. README.md in this folder says from what. */
export const BIAS = -0.748975
/** One for each name of EVIDENCE. */
export const WEIGHTS: readonly number[] = [
  -2.59241, 1.85329, 1.64592, -0.0113827, -0.179922, 0.578991, 0.192663, -0.213016, 0.936342,
  0.415313, -0.40818, -1.50175, 0.336643, -1.17855, 0.559799, -0.141647, 0.0926945, 2.95727,
  -3.14213, -0.384621, 0.264442, 0.971396, -0.667731, -0.195852, 0.291287, 1.05078, -0.73288,
]
/** Where one of several reference answers is enough: for their binary logarithm, and once. */
export const ALTERNATIVES = { many: -0.624367, several: -0.177353 } as const
/** From this sureness on a short answer is called correct. */
export const CORRECT = 0.4
