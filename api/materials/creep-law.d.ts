import { type Given } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
import { type ComplianceSeries, type RelaxationSeries } from './interconversion.js';
export interface CreepLaw {
    readonly name: string;
    readonly strain: (stress: In<'stress'>, time: In<'time'>) => Quantity<'strain'>;
    readonly si: (stress: number, time: number) => number;
    readonly linear?: {
        readonly compliance: (time: number) => number;
        readonly integral: (time: number) => number;
    };
}
export type LinearCreepLaw = CreepLaw & {
    readonly linear: NonNullable<CreepLaw['linear']>;
};
declare const FINDLEY: {
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly creepCoefficient: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
};
export declare function findleyLaw(parameters: Given<typeof FINDLEY>): LinearCreepLaw;
declare const SINH: {
    readonly elasticStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly elasticStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly creepStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly creepStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
};
export declare function findleySinhLaw(parameters: Given<typeof SINH>): CreepLaw;
export declare function complianceLaw(series: ComplianceSeries): LinearCreepLaw;
export declare function relaxationLaw(series: RelaxationSeries): LinearCreepLaw;
export {};
