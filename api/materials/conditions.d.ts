import type { StressConditions } from './allowable.js';
export type Direction = 'alongLayers' | 'acrossLayers' | 'interlayerShear';
export type Moisture = 'dry' | 'conditioned' | 'saturated';
export declare const conditionsReader: (where: string, given: StressConditions) => {
    readonly direction: Direction;
    readonly temperature: number;
    readonly duration: number;
    readonly moisture: Moisture;
    readonly cycles: number | undefined;
    readonly safetyFactor: number;
};
