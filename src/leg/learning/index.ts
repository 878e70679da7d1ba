/** Logs of the test stand, read and fed back into the leg. */

export type { MovedField, StandLogs } from './corrections.js'
export type { EstimateOptions } from './estimate.js'
export type { ComparedLog } from './foot.js'
export { type LearnOptions, learn } from './learn.js'
export { learntText } from './learn-page.js'
export type { Learnt } from './learnt.js'
export type { LogColumn, LogRemark } from './logs.js'
export type { MeasurementId } from './measurements.js'
export type { NextMeasurement } from './next.js'
export type { SpikeOptions } from './spikes.js'
