import { type In, Quantity } from '../units/index.js';
import type { CreepLaw, LinearCreepLaw } from './creep-law.js';
export interface StressCorner {
    readonly time: In<'time'>;
    readonly stress: In<'stress'>;
}
export interface SuperpositionOptions {
    readonly strength?: In<'stress'> | undefined;
}
export declare function boltzmannStrain(law: CreepLaw, history: readonly StressCorner[], times: readonly In<'time'>[], options?: SuperpositionOptions): Quantity<'strain'>[];
export declare function superposedSi(law: LinearCreepLaw, history: readonly {
    readonly time: number;
    readonly stress: number;
}[], t: number): number;
export interface CurvePoint {
    readonly strain: Quantity<'strain'>;
    readonly stress: Quantity<'stress'>;
}
export declare function isochronousCurve(law: CreepLaw, time: In<'time'>, stresses: readonly In<'stress'>[]): CurvePoint[];
export declare function isometricCurve(law: CreepLaw, strain: In<'strain'>, times: readonly In<'time'>[]): {
    readonly time: Quantity<'time'>;
    readonly stress: Quantity<'stress'>;
}[];
export declare function timeToStrain(law: CreepLaw, stress: In<'stress'>, strain: In<'strain'>): Quantity<'time'>;
export interface RelaxationCurve {
    (time: Quantity<'time'>): Quantity<'ratio'>;
    readonly si: (time: number) => number;
}
export declare function relaxationCurve(law: LinearCreepLaw, upTo: In<'time'>): RelaxationCurve;
