import { type Check } from './check.js';
export declare const bossChecks: readonly Check[];
