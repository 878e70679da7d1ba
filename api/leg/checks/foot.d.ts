import { type Check } from './check.js';
export declare const footChecks: readonly Check[];
