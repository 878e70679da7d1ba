import { type Chart } from '../chart/index.js';
import type { In } from '../units/index.js';
import { type StressConditions } from './allowable.js';
import type { CreepLaw } from './creep-law.js';
import type { Material } from './record.js';
export declare function allowableChart(materials: readonly Material[], durations: readonly In<'time'>[], conditions: Omit<StressConditions, 'temperature' | 'duration'>, range?: {
    readonly from: In<'temperature'>;
    readonly to: In<'temperature'>;
}): Chart;
export declare function isochronousChart(law: CreepLaw, times: readonly In<'time'>[], largestStress: In<'stress'>): Chart;
