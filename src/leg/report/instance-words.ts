import { SECOND_STAGE } from '../second-stage.js'
import { one } from './amounts.js'

/** The name of an instance in words; the second stage of a knee has none of its own in the document. */
export const instanceName = (name: string): string => (name === SECOND_STAGE ? 'stage along the upper link' : one(name))

/** A group of bolts in words: `stack` and `motorBolts` are the stack bolts and the motor bolts. */
export const boltsName = (group: string): string => (/bolts$/i.test(group) ? one(group) : `${one(group)} bolts`)

/** Events and stances in words, as they stand beside a step of a calculation. */
export const EVENT_WORDS: Readonly<Record<string, string>> = {
  stand: 'standing',
  walk: 'walk',
  walkBack: 'walk backward',
  blocked: 'blocked',
  blockedBack: 'blocked backward',
  stall: 'stall',
  stallBack: 'stall backward',
  trot: 'trot',
  hop: 'hop',
  hopEnd: 'end of a hop',
  drop: 'drop',
  dropEnd: 'end of a landing',
  firstSteps: 'first steps',
  firstStepsBack: 'first steps backward',
  slope: 'up a slope',
  slopeDown: 'down a slope',
  slopeAcross: 'across a slope',
  season: 'season',
  seasonBack: 'season backward',
  shelf: 'shelf',
  unloaded: 'unloaded',
}

/** Airs in words. */
export const AIR_WORDS: Readonly<Record<string, string>> = {
  normal: 'ordinary air',
  normalStill: 'ordinary still air',
  hot: 'hot still air',
  cold: 'cold air',
  shelf: 'air of the shelf',
}

/** Ages in words. */
export const AGE_WORDS: Readonly<Record<string, string>> = { new: 'as assembled', year: 'after a year' }
