import type { Formula, Inputs, Output } from '../formula/index.js';
import { type Block } from './block-file.js';
import { type Runner, type SweepPlan } from './sweep.js';
import { Table } from './table.js';
import { type WorkerPlan } from './workers.js';
export interface SweepProgress {
    readonly done: number;
    readonly of: number;
    readonly resumed: number;
}
export interface RunOptions {
    readonly blockRows?: number;
    readonly onProgress?: (progress: SweepProgress) => void;
    readonly signal?: AbortSignal;
    readonly file?: string;
    readonly shard?: readonly [k: number, n: number];
    readonly workers?: WorkerPlan;
}
export declare class SweepStopped extends Error {
    readonly progress: SweepProgress;
    name: string;
    constructor(progress: SweepProgress, cause: unknown);
}
export interface SweepJob {
    readonly id: string;
    readonly rows: number;
    readonly runner: Runner;
    block(number: number, blockRows: number): Block;
}
export declare function sweepJob<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<SweepPlan<I>>): SweepJob;
export declare function runSweep(job: SweepJob, options?: RunOptions): Promise<Table>;
export declare function mergeSweep(job: SweepJob, files: readonly string[]): Promise<Table>;
