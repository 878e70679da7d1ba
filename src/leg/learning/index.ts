/** Logs of the test stand, read and fed back into the leg. */
export { type LearnOptions, type Learnt, learn, learntText, type MovedField, type StandLogs } from './learn.js'
export type { LogColumn, LogRemark } from './logs.js'
export type { MeasurementId } from './measurements.js'
