/** Made by src/cli/calibrate.ts; not edited by hand. One weight for each number of learningEvidence. */
export const LEARNING: { readonly bias: number; readonly weights: readonly number[] } = {
  bias: -0.150647,
  weights: [1.01564, 0.655823, 0.679871, 0.074479, 2.80015],
}
/** From this sureness on an answer is called correct once marked answers were learnt from. */
export const CORRECT_AFTER_LEARNING = 0.46
