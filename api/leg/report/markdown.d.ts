import type { Assessment } from '../result.js';
export declare function markdownReport(assessment: Assessment): string;
