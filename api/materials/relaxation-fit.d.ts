import { Property } from '../formula/index.js';
import { type In } from '../units/index.js';
import type { Relaxation } from './interconversion.js';
export interface RelaxationReading {
    readonly time: In<'time'>;
    readonly modulus: In<'modulus'>;
}
export interface RelaxationFit {
    readonly series: Relaxation;
    readonly scatter: number;
    readonly residuals: readonly number[];
}
export declare function fitRelaxation(readings: readonly RelaxationReading[], options?: {
    readonly termsPerDecade?: number;
    readonly fluid?: boolean;
}): RelaxationFit;
export interface ShiftReading {
    readonly temperature: In<'temperature'>;
    readonly shift: In<'ratio'>;
}
export declare function fitActivationEnergy(readings: readonly ShiftReading[], reference: In<'temperature'>, confidence?: number): Property<'activationEnergy'>;
