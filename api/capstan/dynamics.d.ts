export declare const reflectedInertia: import("../formula/formula.js").Formula<{
    readonly rotorInertia: {
        readonly kind: "momentOfInertia";
        readonly min: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "momentOfInertia">;
export declare const stiffnessAtMotor: import("../formula/formula.js").Formula<{
    readonly stiffness: {
        readonly kind: "torsionalStiffness";
        readonly min: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "torsionalStiffness">;
export declare const driveResonance: import("../formula/formula.js").Formula<{
    readonly stiffness: {
        readonly kind: "torsionalStiffness";
        readonly above: 0;
    };
    readonly loadInertia: {
        readonly kind: "momentOfInertia";
        readonly above: 0;
    };
    readonly reflectedInertia: {
        readonly kind: "momentOfInertia";
        readonly above: 0;
    };
}, {
    readonly motorLocked: "frequency";
    readonly motorFree: "frequency";
    readonly usableBandwidth: "frequency";
}>;
export declare const registryDrift: import("../formula/formula.js").Formula<{
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly stroke: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly tensionDifference: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
}, "angle">;
