import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import { DriveCoupling } from './coupling.js';
import { FootPath } from './foot-path.js';
import { ThreeJointLeg } from './leg.js';
import { LegDynamics } from './leg-dynamics.js';
import { type GroundReactionSi, type StrideSamples } from './stride-samples.js';
import { type PerJoint, type Vector3 } from './vectors.js';
declare const DRIVE: {
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly efficiency: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly backEfficiency: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly rotorInertia: {
        readonly kind: "momentOfInertia";
        readonly min: 0;
        readonly default: "0 kg m^2";
    };
    readonly motor: {
        readonly fields: {
            readonly torqueConstant: {
                readonly kind: "torqueConstantDc";
                readonly above: 0;
            };
            readonly resistance: {
                readonly kind: "electricalResistance";
                readonly min: 0;
            };
            readonly noLoadCurrent: {
                readonly kind: "current";
                readonly min: 0;
                readonly default: "0 A";
            };
        };
        readonly optional: true;
    };
};
declare const SPECIFICATION: {
    readonly load: {
        readonly fields: {
            readonly mass: {
                readonly kind: "mass";
                readonly above: 0;
            };
            readonly legShare: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 1;
            };
            readonly shape: {
                readonly oneOf: readonly ["halfSine", "parabolic", "rectangular", "twoPeaked"];
                readonly default: "halfSine";
            };
            readonly thirdHarmonic: {
                readonly kind: "ratio";
                readonly min: -0.3333;
                readonly max: 1;
                readonly default: 0.4;
            };
            readonly gravity: {
                readonly kind: "acceleration";
                readonly above: 0;
                readonly default: "9.80665 m/s^2";
            };
            readonly foreAft: {
                readonly oneOf: readonly ["none", "throughHip"];
                readonly default: "none";
            };
        };
        readonly optional: true;
    };
    readonly drives: {
        readonly fields: {
            readonly abduction: {
                readonly fields: {
                    readonly ratio: {
                        readonly kind: "ratio";
                        readonly above: 0;
                    };
                    readonly efficiency: {
                        readonly kind: "ratio";
                        readonly above: 0;
                        readonly max: 1;
                        readonly default: 1;
                    };
                    readonly backEfficiency: {
                        readonly kind: "ratio";
                        readonly min: 0;
                        readonly max: 1;
                        readonly default: 1;
                    };
                    readonly rotorInertia: {
                        readonly kind: "momentOfInertia";
                        readonly min: 0;
                        readonly default: "0 kg m^2";
                    };
                    readonly motor: {
                        readonly fields: {
                            readonly torqueConstant: {
                                readonly kind: "torqueConstantDc";
                                readonly above: 0;
                            };
                            readonly resistance: {
                                readonly kind: "electricalResistance";
                                readonly min: 0;
                            };
                            readonly noLoadCurrent: {
                                readonly kind: "current";
                                readonly min: 0;
                                readonly default: "0 A";
                            };
                        };
                        readonly optional: true;
                    };
                };
            };
            readonly hip: {
                readonly fields: {
                    readonly ratio: {
                        readonly kind: "ratio";
                        readonly above: 0;
                    };
                    readonly efficiency: {
                        readonly kind: "ratio";
                        readonly above: 0;
                        readonly max: 1;
                        readonly default: 1;
                    };
                    readonly backEfficiency: {
                        readonly kind: "ratio";
                        readonly min: 0;
                        readonly max: 1;
                        readonly default: 1;
                    };
                    readonly rotorInertia: {
                        readonly kind: "momentOfInertia";
                        readonly min: 0;
                        readonly default: "0 kg m^2";
                    };
                    readonly motor: {
                        readonly fields: {
                            readonly torqueConstant: {
                                readonly kind: "torqueConstantDc";
                                readonly above: 0;
                            };
                            readonly resistance: {
                                readonly kind: "electricalResistance";
                                readonly min: 0;
                            };
                            readonly noLoadCurrent: {
                                readonly kind: "current";
                                readonly min: 0;
                                readonly default: "0 A";
                            };
                        };
                        readonly optional: true;
                    };
                };
            };
            readonly knee: {
                readonly fields: {
                    readonly ratio: {
                        readonly kind: "ratio";
                        readonly above: 0;
                    };
                    readonly efficiency: {
                        readonly kind: "ratio";
                        readonly above: 0;
                        readonly max: 1;
                        readonly default: 1;
                    };
                    readonly backEfficiency: {
                        readonly kind: "ratio";
                        readonly min: 0;
                        readonly max: 1;
                        readonly default: 1;
                    };
                    readonly rotorInertia: {
                        readonly kind: "momentOfInertia";
                        readonly min: 0;
                        readonly default: "0 kg m^2";
                    };
                    readonly motor: {
                        readonly fields: {
                            readonly torqueConstant: {
                                readonly kind: "torqueConstantDc";
                                readonly above: 0;
                            };
                            readonly resistance: {
                                readonly kind: "electricalResistance";
                                readonly min: 0;
                            };
                            readonly noLoadCurrent: {
                                readonly kind: "current";
                                readonly min: 0;
                                readonly default: "0 A";
                            };
                        };
                        readonly optional: true;
                    };
                };
            };
        };
    };
    readonly kneeBend: {
        readonly oneOf: readonly ["forward", "backward"];
        readonly default: "forward";
    };
    readonly foot: {
        readonly oneOf: readonly ["below", "above"];
        readonly default: "below";
    };
    readonly samples: {
        readonly kind: "count";
        readonly min: 16;
        readonly max: 100000;
        readonly whole: true;
        readonly default: 240;
    };
};
export interface DriveSpecification extends Given<typeof DRIVE> {
}
export interface StrideSpecification extends Given<typeof SPECIFICATION> {
    readonly leg: ThreeJointLeg;
    readonly path: FootPath;
    readonly dynamics?: LegDynamics;
    readonly coupling?: DriveCoupling;
    readonly groundReactionSi?: GroundReactionSi;
}
export interface Demand {
    readonly peakTorque: Quantity<'torque'>;
    readonly rmsTorque: Quantity<'torque'>;
    readonly peakSpeed: Quantity<'angularVelocity'>;
    readonly peakPowerOut: Quantity<'power'>;
    readonly meanPowerOut: Quantity<'power'>;
    readonly peakPowerIn: Quantity<'power'>;
    readonly meanPowerIn: Quantity<'power'>;
}
export interface MotorDemand extends Demand {
    readonly electrical: {
        readonly peakCurrent: Quantity<'current'>;
        readonly rmsCurrent: Quantity<'current'>;
        readonly peakVoltage: Quantity<'voltage'>;
        readonly meanCopperLoss: Quantity<'power'>;
        readonly meanElectricalPower: Quantity<'power'>;
    } | undefined;
    readonly cloud: {
        readonly speed: Float64Array;
        readonly torque: Float64Array;
    };
}
export interface Walkable {
    readonly walkable: true;
    readonly joints: PerJoint<Demand>;
    readonly actuators: PerJoint<Demand>;
    readonly motors: PerJoint<MotorDemand>;
    readonly samples: StrideSamples;
}
export interface NotWalkable {
    readonly walkable: false;
    readonly reason: 'unreachable' | 'jointLimits' | 'singular' | 'driveApart';
    readonly time: Quantity<'time'>;
    readonly foot: Vector3<'length'>;
}
export declare function strideDemand(given: StrideSpecification): Walkable | NotWalkable;
export {};
