import type { Check } from './types'

/** By time, then by id, so that the order in which records are stored never matters. */
export const byTime = (a: Check, b: Check): number =>
  a.atMs - b.atMs || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
