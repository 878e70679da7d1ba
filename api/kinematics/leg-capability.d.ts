import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import { type GivenAngles, type LegJoint, type ThreeJointLeg } from './leg.js';
import { type Vector3 } from './vectors.js';
declare const SPEED: {
    readonly angles: {
        readonly fields: {
            abduction: "angle";
            hip: "angle";
            knee: "angle";
        };
    };
    readonly rateLimits: {
        readonly fields: {
            abduction: "angularVelocity";
            hip: "angularVelocity";
            knee: "angularVelocity";
        };
    };
    readonly direction: {
        readonly fields: {
            x: "ratio";
            y: "ratio";
            z: "ratio";
        };
    };
};
declare const PUSH: {
    readonly angles: {
        readonly fields: {
            abduction: "angle";
            hip: "angle";
            knee: "angle";
        };
    };
    readonly torqueLimits: {
        readonly fields: {
            abduction: "torque";
            hip: "torque";
            knee: "torque";
        };
    };
    readonly direction: {
        readonly fields: {
            x: "ratio";
            y: "ratio";
            z: "ratio";
        };
    };
};
export interface SpeedLimit {
    readonly pureDirection: Quantity<'velocity'>;
    readonly bestDirection: Quantity<'velocity'>;
    readonly limitedBy: LegJoint | undefined;
}
export interface PushLimit {
    readonly pureDirection: Quantity<'force'>;
    readonly bestDirection: Quantity<'force'>;
    readonly limitedBy: LegJoint | undefined;
}
export declare function footSpeedLimit(leg: ThreeJointLeg, given: Given<typeof SPEED>): SpeedLimit;
export declare function footPushLimit(leg: ThreeJointLeg, given: Given<typeof PUSH>): PushLimit;
export interface EllipsoidAxis<K extends 'length' | 'curvature'> {
    readonly direction: Vector3<'ratio'>;
    readonly halfLength: Quantity<K>;
}
export interface Manipulability {
    readonly measure: Quantity<'volume'>;
    readonly velocityAxes: readonly EllipsoidAxis<'length'>[];
    readonly forceAxes: readonly EllipsoidAxis<'curvature'>[];
    readonly smallestSingularValue: Quantity<'length'>;
    readonly inverseCondition: Quantity<'ratio'>;
    readonly toSingularity: {
        readonly kneeFromStraight: Quantity<'angle'>;
        readonly kneeFromFolded: Quantity<'angle'>;
        readonly footBelowHipAxis: Quantity<'length'>;
    };
}
export declare function manipulability(leg: ThreeJointLeg, angles: GivenAngles): Manipulability;
export {};
