import type { Check } from './check.js';
export declare const CHECKS: readonly Check[];
