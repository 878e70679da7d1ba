import { Property } from '../formula/index.js';
import { type In, type Note } from '../units/index.js';
import { type CreepLaw, type LinearCreepLaw } from './creep-law.js';
export interface CreepReading {
    readonly time: In<'time'>;
    readonly stress: In<'stress'>;
    readonly strain: In<'strain'>;
}
export interface CreepFitOptions {
    readonly referenceTime?: In<'time'>;
    readonly confidence?: number;
}
export interface CreepFit<N extends string> {
    readonly parameters: {
        readonly [K in N]: Property;
    };
    readonly scatter: number;
    readonly residuals: readonly number[];
    readonly notes: readonly Note[];
}
export declare function fitFindley(readings: readonly CreepReading[], options?: CreepFitOptions): CreepFit<'modulus' | 'creepCoefficient' | 'creepExponent'> & {
    readonly law: LinearCreepLaw;
};
export declare function fitFindleySinh(readings: readonly CreepReading[], options?: CreepFitOptions): CreepFit<'elasticStrain' | 'elasticStress' | 'creepStrain' | 'creepStress' | 'creepExponent'> & {
    readonly law: CreepLaw;
};
export declare function fitNortonBailey(readings: readonly CreepReading[], options?: CreepFitOptions): CreepFit<'referenceStrain' | 'stressExponent' | 'timeExponent'> & {
    readonly referenceStress: number;
    readonly referenceTime: number;
};
