/** Made by src/cli/calibrate.ts; not edited by hand. One weight for each number of learningEvidence. */
export const LEARNING: { readonly bias: number; readonly weights: readonly number[] } = {
  bias: -0.152911,
  weights: [1.01311, 0.650651, 0.70559, 0.0614719, 2.79327],
}
/** From this sureness on an answer is called correct once marked answers were learnt from. */
export const CORRECT_AFTER_LEARNING = 0.46
