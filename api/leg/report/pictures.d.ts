import type { Chart } from '../../chart/index.js';
import type { Assessment } from '../result.js';
import { type ReportChart } from './charts.js';
export interface ReportPicture extends ReportChart {
    readonly svg: string | undefined;
}
export declare function chartSvg(chart: Chart): Promise<string>;
export declare function reportPictures(assessment: Assessment): Promise<readonly ReportPicture[]>;
