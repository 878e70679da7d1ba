import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import { type LegBranch } from './leg-branches.js';
import { LegKernel } from './leg-kernel.js';
import { type LimitsSi } from './leg-nearest.js';
import { type PerJoint, perJoint, type Vector3, xyz } from './vectors.js';
declare const SPECIFICATION: {
    readonly hipOffset: "length";
    readonly upperLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lowerLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly limits: {
        readonly fields: {
            readonly abduction: {
                readonly fields: {
                    readonly lowest: "angle";
                    readonly highest: "angle";
                };
                readonly optional: true;
            };
            readonly hip: {
                readonly fields: {
                    readonly lowest: "angle";
                    readonly highest: "angle";
                };
                readonly optional: true;
            };
            readonly knee: {
                readonly fields: {
                    readonly lowest: "angle";
                    readonly highest: "angle";
                };
                readonly optional: true;
            };
        };
        readonly optional: true;
    };
};
declare const ANGLES: {
    abduction: "angle";
    hip: "angle";
    knee: "angle";
};
declare const POINT: {
    x: "length";
    y: "length";
    z: "length";
};
export declare const LEG_JOINTS: readonly ["abduction", "hip", "knee"];
export type LegJoint = (typeof LEG_JOINTS)[number];
export interface LegSpecification extends Given<typeof SPECIFICATION> {
}
export interface GivenAngles extends Given<typeof ANGLES> {
}
export interface GivenPoint extends Given<typeof POINT> {
}
export interface ActiveLimit {
    readonly joint: LegJoint;
    readonly end: 'lowest' | 'highest';
}
export interface Reachable {
    readonly reachable: true;
    readonly branches: readonly LegBranch[];
    readonly excluded: readonly LegBranch[];
}
export interface Unreachable {
    readonly reachable: false;
    readonly reason: 'tooFar' | 'tooNear' | 'insideOffsetCylinder' | 'jointLimits';
    readonly nearest: Vector3<'length'>;
    readonly miss: Quantity<'length'>;
    readonly angles: PerJoint<Quantity<'angle'>>;
    readonly activeLimits: readonly ActiveLimit[];
    readonly directionArbitrary: boolean;
}
export interface AtSingularity {
    readonly regular: false;
    readonly singularity: Exclude<Singularity, 'none'>;
}
export type Singularity = 'none' | 'kneeStraight' | 'kneeFolded' | 'footLevelWithHip';
export declare class ThreeJointLeg {
    readonly si: LegKernel;
    readonly limitsSi: LimitsSi;
    footPosition(angles: GivenAngles): Vector3<'length'>;
    jointPositions(angles: GivenAngles): {
        readonly [P in 'hip' | 'knee' | 'foot']: Vector3<'length'>;
    };
    jointAngles(foot: GivenPoint): Reachable | Unreachable;
    jacobian(angles: GivenAngles): Quantity<'length'>[][];
    torqueFromFootPush(given: {
        readonly angles: GivenAngles;
        readonly footPush: Given<ReturnType<typeof xyz<'force'>>>;
    }): PerJoint<Quantity<'torque'>>;
    torqueFromGroundReaction(given: {
        readonly angles: GivenAngles;
        readonly groundReaction: Given<ReturnType<typeof xyz<'force'>>>;
    }): PerJoint<Quantity<'torque'>>;
    footPushFromTorque(given: {
        readonly angles: GivenAngles;
        readonly torque: Given<ReturnType<typeof perJoint<'torque'>>>;
    }): {
        readonly regular: true;
        readonly footPush: Vector3<'force'>;
        readonly groundReaction: Vector3<'force'>;
    } | AtSingularity;
    footVelocity(given: {
        readonly angles: GivenAngles;
        readonly rates: Given<ReturnType<typeof perJoint<'angularVelocity'>>>;
    }): Vector3<'velocity'>;
    jointRates(given: {
        readonly angles: GivenAngles;
        readonly footVelocity: Given<ReturnType<typeof xyz<'velocity'>>>;
    }): {
        readonly regular: true;
        readonly rates: PerJoint<Quantity<'angularVelocity'>>;
    } | AtSingularity;
    singularity(angles: GivenAngles): Singularity;
    private singular;
    private torque;
    private read;
}
export declare function threeJointLeg(given: LegSpecification): ThreeJointLeg;
export {};
