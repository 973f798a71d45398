/** Reads what was brought, so that the page can be used, and the work be stopped, meanwhile. */
import { expose } from 'comlink'
import { answerCase, answerColumns, answerDocx, answerTable, answerText } from './answer-import'

const jobs = { answerCase, answerColumns, answerDocx, answerTable, answerText }
export type ImportJobs = typeof jobs
expose(jobs)
