import { type In, Quantity } from '../units/index.js';
import type { PartLimit } from './limits.js';
import { type MotorMount } from './mount.js';
export interface Remedy {
    readonly name: string;
    readonly mount: MotorMount;
    readonly limits?: readonly PartLimit[];
    readonly duty?: {
        readonly dutyFactor: In<'ratio'>;
        readonly period: In<'time'>;
    };
    readonly extraMass?: In<'mass'>;
}
export interface RemedyRow {
    readonly name: string;
    readonly torque: Quantity<'torque'>;
    readonly low: Quantity<'torque'>;
    readonly high: Quantity<'torque'>;
    readonly gain: Quantity<'torque'>;
    readonly addedMass: Quantity<'mass'>;
    readonly percentPerGram: number | undefined;
    readonly mountTemperature: Quantity<'temperature'> | undefined;
    readonly governs: string;
}
export declare function compareRemedies(mount: MotorMount, limits: readonly PartLimit[], remedies: readonly Remedy[], at: {
    readonly torque: In<'torque'>;
}): RemedyRow[];
export declare function standardRemedies(mount: MotorMount): Remedy[];
