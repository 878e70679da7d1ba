import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import type { DriveCoupling } from './coupling.js';
import type { GivenAngles, ThreeJointLeg } from './leg.js';
import { LegDynamicsKernel } from './leg-dynamics-kernel.js';
import { type PerJoint, type Vector3 } from './vectors.js';
declare const SPECIFICATION: {
    readonly hipLink: {
        readonly fields: {
            readonly mass: {
                readonly kind: "mass";
                readonly min: 0;
            };
            readonly centreOfMass: {
                readonly fields: {
                    x: "length";
                    y: "length";
                    z: "length";
                };
            };
            readonly inertia: {
                readonly fields: {
                    readonly xx: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly yy: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly zz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly xy: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly xz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly yz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                };
                readonly optional: true;
            };
        };
    };
    readonly upperLink: {
        readonly fields: {
            readonly mass: {
                readonly kind: "mass";
                readonly min: 0;
            };
            readonly centreOfMass: {
                readonly fields: {
                    x: "length";
                    y: "length";
                    z: "length";
                };
            };
            readonly inertia: {
                readonly fields: {
                    readonly xx: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly yy: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly zz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly xy: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly xz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly yz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                };
                readonly optional: true;
            };
        };
    };
    readonly lowerLink: {
        readonly fields: {
            readonly mass: {
                readonly kind: "mass";
                readonly min: 0;
            };
            readonly centreOfMass: {
                readonly fields: {
                    x: "length";
                    y: "length";
                    z: "length";
                };
            };
            readonly inertia: {
                readonly fields: {
                    readonly xx: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly yy: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly zz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly xy: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly xz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                    readonly yz: {
                        readonly kind: "momentOfInertia";
                        readonly default: "0 kg m^2";
                    };
                };
                readonly optional: true;
            };
        };
    };
    readonly gravity: {
        readonly fields: {
            x: "acceleration";
            y: "acceleration";
            z: "acceleration";
        };
        readonly optional: true;
    };
};
export interface LegMasses extends Given<typeof SPECIFICATION> {
}
declare const MOTION: {
    readonly angles: {
        readonly fields: {
            abduction: "angle";
            hip: "angle";
            knee: "angle";
        };
    };
    readonly rates: {
        readonly fields: {
            abduction: "angularVelocity";
            hip: "angularVelocity";
            knee: "angularVelocity";
        };
    };
    readonly accelerations: {
        readonly fields: {
            abduction: "angularAcceleration";
            hip: "angularAcceleration";
            knee: "angularAcceleration";
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
};
declare const EFFECTIVE: {
    readonly angles: {
        readonly fields: {
            abduction: "angle";
            hip: "angle";
            knee: "angle";
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
export declare class LegDynamics {
    readonly leg: ThreeJointLeg;
    readonly si: LegDynamicsKernel;
    private readonly still;
    private readonly links;
    private readonly gravity;
    inverseDynamics(given: Given<typeof MOTION>): PerJoint<Quantity<'torque'>>;
    gravityTorque(angles: GivenAngles): PerJoint<Quantity<'torque'>>;
    coriolisTorque(given: {
        readonly angles: GivenAngles;
        readonly rates: Given<typeof MOTION.rates.fields>;
    }): PerJoint<Quantity<'torque'>>;
    massMatrix(angles: GivenAngles): Quantity<'momentOfInertia'>[][];
    massMatrixInto(out: Float64Array, offset: number, q: Float64Array): void;
    centreOfMass(angles: GivenAngles): {
        readonly position: Vector3<'length'>;
        readonly mass: Quantity<'mass'>;
    };
    centreOfMassInto(out: Float64Array, offset: number, q: ArrayLike<number>): number;
    potentialEnergySi(q: ArrayLike<number>): number;
    effectiveMass(given: Given<typeof EFFECTIVE>, drives?: {
        readonly coupling: DriveCoupling;
        readonly rotorInertiaAtOutput: PerJoint<number>;
    }): {
        readonly free: Quantity<'mass'>;
        readonly constrained: Quantity<'mass'>;
    } | undefined;
}
export declare const legDynamics: (leg: ThreeJointLeg, given: LegMasses) => LegDynamics;
export {};
