import type { Block } from './block-file.js';
export interface WorkerPlan {
    readonly count: number;
    readonly module: string | URL;
    readonly name: string;
}
export declare function workers({ count, module, name }: WorkerPlan, blocks: readonly number[], blockRows: number, keep: (result: Block) => Promise<void>, stop: () => void): Promise<void>;
