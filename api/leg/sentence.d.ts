import type { Check } from './checks/check.js';
import type { Joint } from './numbers.js';
export declare function sentenceOf(check: Check, joint: Joint, caseTitle: string, demand: number, capacity: number, reserve: number): string;
