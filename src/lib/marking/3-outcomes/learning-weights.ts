/** Made by src/cli/calibrate.ts; not edited by hand. One weight for each number of learningEvidence. */
export const LEARNING: { readonly bias: number; readonly weights: readonly number[] } = {
  bias: -0.140537,
  weights: [1.02019, 0.655343, 0.700908, 0.0242841, 2.73134],
}
/** From this sureness on an answer is called correct once marked answers were learnt from. */
export const CORRECT_AFTER_LEARNING = 0.46
