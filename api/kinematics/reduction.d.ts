export declare const motorTorqueThroughReduction: import("../formula/formula.js").Formula<{
    readonly outputTorque: "torque";
    readonly outputSpeed: "angularVelocity";
    readonly outputAcceleration: {
        readonly kind: "angularAcceleration";
        readonly default: "0 rad/s^2";
    };
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
}, "torque">;
export declare const motorOperatingPoint: import("../formula/formula.js").Formula<{
    readonly torque: "torque";
    readonly speed: "angularVelocity";
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
}, {
    readonly current: "current";
    readonly voltage: "voltage";
    readonly mechanicalPower: "power";
    readonly copperLoss: "power";
    readonly electricalPower: "power";
}>;
