import type { Check } from './check.js';
export declare const zoneChecks: readonly Check[];
