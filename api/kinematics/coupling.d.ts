import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import type { LimitsSi } from './leg-nearest.js';
import { type PerJoint } from './vectors.js';
declare const SPECIFICATION: {
    readonly knee: {
        readonly oneOf: readonly ["motorAtKnee", "cordFromHip", "parallelogram", "fourBar"];
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly optional: true;
    };
    readonly motorOn: {
        readonly oneOf: readonly ["body", "thigh"];
        readonly default: "body";
    };
    readonly fourBar: {
        readonly fields: {
            readonly ground: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly crank: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly coupler: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly rocker: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly rockerAngleAtStraightKnee: "angle";
            readonly crankAngleAtStraightKnee: "angle";
        };
        readonly optional: true;
    };
};
export interface CouplingSpecification extends Given<typeof SPECIFICATION> {
}
export declare class DriveCoupling {
    private readonly law;
    readonly constantRatio: boolean;
    private readonly carried;
    actuatorAngles(joints: Given<typeof ANGLES>): PerJoint<Quantity<'angle'>>;
    jointAngles(actuators: Given<typeof ANGLES>): PerJoint<Quantity<'angle'>>;
    actuatorRates(given: {
        readonly angles: Given<typeof ANGLES>;
        readonly rates: Given<typeof RATES>;
    }): PerJoint<Quantity<'angularVelocity'>>;
    actuatorTorques(given: {
        readonly angles: Given<typeof ANGLES>;
        readonly torque: Given<typeof TORQUES>;
    }): PerJoint<Quantity<'torque'>>;
    jointTorques(given: {
        readonly angles: Given<typeof ANGLES>;
        readonly torque: Given<typeof TORQUES>;
    }): PerJoint<Quantity<'torque'>>;
    assemblesAt(knee: number): boolean;
    kneeRatio(knee: number): number;
    matrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    actuatorAnglesInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    jointAnglesInto(out: Float64Array, offset: number, actuators: ArrayLike<number>): void;
    actuatorRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void;
    jointRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void;
    actuatorAccelerationsInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>, accelerations: ArrayLike<number>): void;
    actuatorTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, joints: ArrayLike<number>): void;
    jointTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void;
    jointMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>, diagonal: ArrayLike<number>): void;
    actuatorLimits(limits: LimitsSi): {
        readonly corners: readonly {
            readonly hip: Quantity<'angle'>;
            readonly knee: Quantity<'angle'>;
        }[];
        readonly kneeActuator: {
            readonly lowest: Quantity<'angle'>;
            readonly highest: Quantity<'angle'>;
        };
    };
    private finite;
    private through;
    private at;
}
declare const ANGLES: {
    abduction: "angle";
    hip: "angle";
    knee: "angle";
};
declare const RATES: {
    abduction: "angularVelocity";
    hip: "angularVelocity";
    knee: "angularVelocity";
};
declare const TORQUES: {
    abduction: "torque";
    hip: "torque";
    knee: "torque";
};
export declare function driveCoupling(given: CouplingSpecification): DriveCoupling;
export {};
