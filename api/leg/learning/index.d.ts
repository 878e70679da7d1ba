export { type LearnOptions, type Learnt, learn, learntText, type MovedField, type StandLogs } from './learn.js';
export type { LogColumn, LogRemark } from './logs.js';
export type { MeasurementId } from './measurements.js';
