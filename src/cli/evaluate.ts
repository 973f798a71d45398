/**
 * npm run -s evaluate -- FOLDER [--drafted] [--learn half] [--json] [--show wrong]
 * npm run -s evaluate -- --short-answers FILE.jsonl… [--learn K] [--json] [--show wrong]
 * Measures the marker on labelled dumps or on short answers. With --learn, K marked answers a question, drawn with a fixed seed, are learnt
 * from before the rest is marked; of labelled dumps half of each topic. Deterministic. On the data that `calibrate` learnt from it flatters: its out-of-fold figures are the honest ones.
 */
import { evaluateCommand } from './evaluate-command'
import { run } from './files'

run(evaluateCommand)
