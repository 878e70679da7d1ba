import type { Of, Use } from '../../../run/index.js'
import { SECOND_STAGE } from '../../../second-stage.js'
import { linkage } from './fields.js'

/** Belt or cord that drives the knee from a pulley on the hip axis, as a drive of its own beside the joints; absent without one. */
export const stageIn = (use: Use<never>): Of<'joint'> | undefined =>
  use.all('joint').find((joint) => use.nameOf('joint', joint) === SECOND_STAGE)

/** Whether the knee is driven from a drum on the hip axis, through belt, cord or rod. */
export const isThroughHip = (use: Use<never>): boolean => stageIn(use) !== undefined || use(linkage) !== undefined

/** Whether a joint is the second stage itself. */
export const isStage = (use: Use<never>, joint: Of<'joint'>): boolean => use.nameOf('joint', joint) === SECOND_STAGE
