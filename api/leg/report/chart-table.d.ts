import type { Chart } from '../../chart/index.js';
export interface ChartTable {
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
}
export declare function chartTable({ layer }: Chart): ChartTable;
