import { type Chart } from '../chart/index.js';
import { type In } from '../units/index.js';
import type { Drive } from './drive.js';
export declare function tensionAlongWrapChart(drive: Drive, torque: In<'torque'>): Chart;
export declare function windupChart(drive: Drive, amplitude: In<'torque'>): Chart;
