import { type Check } from './check.js';
export declare const drumChecks: readonly Check[];
