import type { Check } from './check.js';
export declare const boltChecks: readonly Check[];
