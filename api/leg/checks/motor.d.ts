import { type Check } from './check.js';
export declare const motorChecks: readonly Check[];
