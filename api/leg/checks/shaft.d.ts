import { type Check } from './check.js';
export declare const shaftChecks: readonly Check[];
