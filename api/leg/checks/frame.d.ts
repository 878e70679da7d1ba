import { type Check } from './check.js';
export declare const frameChecks: readonly Check[];
