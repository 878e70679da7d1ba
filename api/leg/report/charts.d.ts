import { type Chart } from '../../chart/index.js';
import type { Assessment } from '../result.js';
export interface ReportChart {
    readonly id: string;
    readonly chart: Chart;
}
export declare function reportCharts(assessment: Assessment): readonly ReportChart[];
