/** Made by src/cli/calibrate.ts; not edited by hand. One weight for each number of learningEvidence. */
export const LEARNING: { readonly bias: number; readonly weights: readonly number[] } = {
  bias: -0.148388,
  weights: [1.01645, 0.653973, 0.705793, 0.0338075, 2.73588],
}
/** From this sureness on an answer is called correct once marked answers were learnt from. */
export const CORRECT_AFTER_LEARNING = 0.46
