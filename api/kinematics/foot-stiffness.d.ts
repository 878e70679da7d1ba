import { type Given } from '../formula/index.js';
import type { Quantity } from '../units/index.js';
import { type DriveCoupling } from './coupling.js';
import type { ThreeJointLeg } from './leg.js';
import { type Vector3 } from './vectors.js';
declare const SPECIFICATION: {
    readonly angles: {
        readonly fields: {
            abduction: "angle";
            hip: "angle";
            knee: "angle";
        };
    };
    readonly driveStiffness: {
        readonly fields: {
            readonly abduction: {
                readonly kind: "torsionalStiffness";
                readonly above: 0;
            };
            readonly hip: {
                readonly kind: "torsionalStiffness";
                readonly above: 0;
            };
            readonly knee: {
                readonly kind: "torsionalStiffness";
                readonly above: 0;
            };
        };
    };
    readonly groundReaction: {
        readonly fields: {
            x: "force";
            y: "force";
            z: "force";
        };
        readonly optional: true;
    };
    readonly upperLink: {
        readonly fields: {
            readonly inPlane: {
                readonly kind: "bendingRigidity";
                readonly above: 0;
            };
            readonly acrossPlane: {
                readonly kind: "bendingRigidity";
                readonly above: 0;
            };
            readonly torsion: {
                readonly kind: "bendingRigidity";
                readonly above: 0;
            };
        };
        readonly optional: true;
    };
    readonly lowerLink: {
        readonly fields: {
            readonly inPlane: {
                readonly kind: "bendingRigidity";
                readonly above: 0;
            };
            readonly acrossPlane: {
                readonly kind: "bendingRigidity";
                readonly above: 0;
            };
            readonly torsion: {
                readonly kind: "bendingRigidity";
                readonly above: 0;
            };
        };
        readonly optional: true;
    };
    readonly footPad: {
        readonly fields: {
            readonly x: {
                readonly kind: "linearCompliance";
                readonly min: 0;
                readonly default: "0 m/N";
            };
            readonly y: {
                readonly kind: "linearCompliance";
                readonly min: 0;
                readonly default: "0 m/N";
            };
            readonly z: {
                readonly kind: "linearCompliance";
                readonly min: 0;
                readonly default: "0 m/N";
            };
        };
        readonly optional: true;
    };
};
export interface FootStiffnessSpecification extends Given<typeof SPECIFICATION> {
    readonly coupling?: DriveCoupling;
}
export interface FootStiffness {
    readonly stable: true;
    readonly compliance: Quantity<'linearCompliance'>[][];
    readonly free: Vector3<'linearStiffness'>;
    readonly guided: Vector3<'linearStiffness'>;
    readonly shares: {
        readonly [part in 'drives' | 'links' | 'footPad']: Vector3<'linearCompliance'>;
    };
    readonly deflection: Vector3<'length'>;
}
export interface FootGivesWay {
    readonly stable: false;
}
export declare function footStiffness(leg: ThreeJointLeg, given: FootStiffnessSpecification): FootStiffness | FootGivesWay;
export declare function loadStiffnessInto(out: Float64Array, leg: ThreeJointLeg, q: ArrayLike<number>, force: ArrayLike<number>): void;
export declare const stiffnessAlong: (complianceSi: ArrayLike<number>, direction: ArrayLike<number>) => {
    free: number;
    guided: number;
};
export {};
