import type { ReadyPoint, ReadyTopic } from '../2-ideas/ready'
import { calibration } from './calibration'
import type { Case } from './judge'
import { likeness, type Given } from './likeness'
import { trigramsOf } from './strings'

/** From this sureness on a drafted point is more likely said than not, by the data it was calibrated on. */
export const MORE_LIKELY_THAN_NOT = calibration.correct

/** A page of so few statements is one answer: it is held against a point as a whole. */
const ONE_ANSWER = 3

/** The features of the stretch of the page that comes nearest to a drafted point; undefined where none comes near. */
export function featuresOf(
  open: Case,
  index: number,
  point: ReadyPoint,
  cover: number,
): number[] | undefined {
  const { page, topic, about, carried } = open
  const last = page.statements.length - 1
  if (last < 0) return undefined
  const nearest = about.nearest(index, 0.01)
  if (last >= ONE_ANSWER && nearest === undefined) return undefined
  const range =
    last < ONE_ANSWER
      ? ([0, last] as const)
      : ([nearest!, nearest! + (carried[nearest!] ? 1 : 0)] as const)
  return likeness(page, point, givenBy(topic), range, cover)
}

function givenBy(topic: ReadyTopic): Given {
  const known = given.get(topic)
  if (known) return known
  const made = { keys: topic.titleKeys, trigrams: trigramsOf(topic.topic.title) }
  given.set(topic, made)
  return made
}
const given = new WeakMap<ReadyTopic, Given>()

/** How likely it is that the point is said, 0 to 1: a logistic model, fitted as `calibration.md` says. */
export function probability(features: readonly number[]): number {
  return logistic(logit(features))
}

export function logit(features: readonly number[]): number {
  const { mean, deviation, weights, bias } = calibration
  return features.reduce(
    (sum, value, i) => sum + (weights[i]! * (value - mean[i]!)) / deviation[i]!,
    bias,
  )
}

export const logistic = (x: number): number => 1 / (1 + Math.exp(-x))
