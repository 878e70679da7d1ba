export declare const twoLinkArmTorque: import("../formula/formula.js").Formula<{
    readonly first: {
        readonly fields: {
            readonly length: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly centreOfMass: "length";
            readonly mass: {
                readonly kind: "mass";
                readonly min: 0;
            };
            readonly inertia: {
                readonly kind: "momentOfInertia";
                readonly min: 0;
            };
        };
    };
    readonly second: {
        readonly fields: {
            readonly centreOfMass: "length";
            readonly mass: {
                readonly kind: "mass";
                readonly min: 0;
            };
            readonly inertia: {
                readonly kind: "momentOfInertia";
                readonly min: 0;
            };
        };
    };
    readonly angle1: "angle";
    readonly angle2: "angle";
    readonly rate1: "angularVelocity";
    readonly rate2: "angularVelocity";
    readonly acceleration1: "angularAcceleration";
    readonly acceleration2: "angularAcceleration";
    readonly gravity: {
        readonly kind: "acceleration";
        readonly min: 0;
        readonly default: "9.81 m/s^2";
    };
}, {
    readonly torque1: "torque";
    readonly torque2: "torque";
}>;
