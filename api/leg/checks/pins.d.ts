import { type Check } from './check.js';
export declare const pinChecks: readonly Check[];
