import { type Given } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
import { type DenavitHartenbergChain, type ScrewChain } from './chain-build.js';
import type { ChainKernel } from './chain-kernel.js';
import { type Vector3, xyz } from './vectors.js';
export type GivenJointValues = readonly (In<'angle'> | In<'length'>)[];
export type JointValue = Quantity<'angle'> | Quantity<'length'>;
export type JointEffort = Quantity<'torque'> | Quantity<'force'>;
export interface Pose {
    readonly position: Vector3<'length'>;
    readonly rotation: Quantity<'ratio'>[][];
}
declare const INVERSE: {
    readonly position: {
        readonly fields: {
            x: "length";
            y: "length";
            z: "length";
        };
    };
    readonly rotation: {
        readonly list: {
            readonly list: "ratio";
            readonly least: 3;
        };
        readonly least: 3;
        readonly optional: true;
    };
    readonly lengthPerRadian: {
        readonly kind: "length";
        readonly above: 0;
        readonly default: "100 mm";
    };
    readonly tolerance: {
        readonly kind: "length";
        readonly above: 0;
        readonly default: "1e-9 m";
    };
    readonly maxIterations: {
        readonly kind: "count";
        readonly min: 1;
        readonly whole: true;
        readonly default: 500;
    };
};
export interface InverseTarget extends Given<typeof INVERSE> {
    readonly seed: GivenJointValues;
    readonly limits?: readonly {
        readonly lowest: In<'angle'> | In<'length'>;
        readonly highest: In<'angle'> | In<'length'>;
    }[];
}
export declare class SerialChain {
    readonly si: ChainKernel;
    pose(values: GivenJointValues): Pose;
    spaceJacobian(values: GivenJointValues): number[][];
    bodyJacobian(values: GivenJointValues): number[][];
    jacobian(values: GivenJointValues): number[][];
    gravity(values: GivenJointValues): JointEffort[];
    inverseDynamics(given: {
        readonly values: GivenJointValues;
        readonly rates: readonly number[];
        readonly accelerations: readonly number[];
        readonly toolPush?: {
            readonly moment: Given<ReturnType<typeof xyz<'torque'>>>;
            readonly force: Given<ReturnType<typeof xyz<'force'>>>;
        };
    }): JointEffort[];
    massMatrix(values: GivenJointValues): number[][];
    coriolis(values: GivenJointValues, rates: readonly number[]): JointEffort[];
    centreOfMass(values: GivenJointValues): {
        readonly position: Vector3<'length'>;
        readonly mass: Quantity<'mass'>;
    };
    effectiveMass(values: GivenJointValues, direction: Given<ReturnType<typeof xyz<'ratio'>>>): {
        readonly free: Quantity<'mass'> | undefined;
        readonly constrained: Quantity<'mass'> | undefined;
    };
    inverse(target: InverseTarget): {
        readonly ended: 'reached' | 'settled' | 'iterationLimit';
        readonly values: JointValue[];
        readonly positionError: Quantity<'length'>;
        readonly rotationError: Quantity<'angle'>;
        readonly iterations: number;
    };
    private values;
    private numbers;
    private efforts;
    private rows;
}
export declare const chainFromScrews: (given: ScrewChain) => SerialChain;
export declare const chainFromDenavitHartenberg: (given: DenavitHartenbergChain) => SerialChain;
export {};
