import { type Chart } from '../chart/index.js';
import { type In } from '../units/index.js';
import type { PartLimit } from './limits.js';
import type { MotorMount } from './mount.js';
import type { RemedyRow } from './remedies.js';
export declare function temperatureChart(course: {
    readonly times: Float64Array;
    readonly temperatures: Readonly<Record<string, Float64Array>>;
}, limits?: readonly PartLimit[], nodes?: readonly string[]): Chart;
export declare function torqueDutyChart(mount: MotorMount, limits: readonly PartLimit[], period?: In<'time'>): Chart;
export declare function remedyChart(rows: readonly RemedyRow[]): Chart;
