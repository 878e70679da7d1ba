/** Logs of the test stand, read and fed back into the leg. */
export type { SpikeOptions } from './estimate.js'
export { type ComparedLog, type LearnOptions, type Learnt, learn, learntText, type MovedField, type StandLogs } from './learn.js'
export type { LogColumn, LogRemark } from './logs.js'
export type { MeasurementId } from './measurements.js'
