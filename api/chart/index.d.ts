export declare const PALETTE: readonly ["#0072B2", "#D55E00", "#009E73", "#CC79A7", "#E69F00", "#56B4E9", "#000000"];
export interface Chart {
    readonly $schema: string;
    readonly title: string;
    readonly description: string;
    readonly [field: string]: unknown;
}
export interface Axis {
    readonly title: string;
    readonly unit: string;
    readonly scale?: 'linear' | 'log';
    readonly zero?: boolean;
}
export interface Series {
    readonly name: string;
    readonly points: readonly (readonly [x: number, y: number])[];
}
export interface Band {
    readonly name: string;
    readonly points: readonly (readonly [x: number, low: number, high: number])[];
}
export interface Rule {
    readonly name: string;
    readonly at: number;
    readonly axis?: 'x' | 'y';
}
export interface ChartText {
    readonly title: string;
    readonly description: string;
}
export declare function lineChart(chart: ChartText & {
    readonly x: Axis;
    readonly y: Axis;
    readonly series: readonly Series[];
    readonly bands?: readonly Band[];
    readonly rules?: readonly Rule[];
}): Chart;
export declare function pointChart(chart: ChartText & {
    readonly x: Axis;
    readonly y: Axis;
    readonly series: readonly Series[];
    readonly lines?: readonly Series[];
    readonly rules?: readonly Rule[];
}): Chart;
export interface Bar {
    readonly name: string;
    readonly to: number;
    readonly from?: number;
    readonly group?: string;
    readonly label?: string;
}
export declare function barChart(chart: ChartText & {
    readonly value: Axis;
    readonly bars: readonly Bar[];
    readonly rules?: readonly Rule[];
}): Chart;
