import type { Assessment } from '../result.js';
export declare function rankedTable({ checks }: Assessment, rows?: number): string;
