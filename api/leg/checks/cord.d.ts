import { type Check } from './check.js';
export declare const pretensionAfter: (pretension: number, leftAfterYear: number, years: number) => number;
export declare const cordChecks: readonly Check[];
