export declare const tighteningTorque: import("../formula/formula.js").Formula<{
    readonly preload: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly thread: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly pitch: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly pitchDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
        };
    };
    readonly threadFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly headFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly prevailingTorque: {
        readonly kind: "torque";
        readonly min: 0;
        readonly default: "0 N m";
    };
}, {
    readonly torque: "torque";
    readonly threadTorque: "torque";
    readonly headTorque: "torque";
    readonly nutTorque: "torque";
    readonly nutFactor: "ratio";
}>;
export declare const tighteningTorqueShort: import("../formula/formula.js").Formula<{
    readonly preload: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly pitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pitchDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly threadFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly headFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "torque">;
export declare const nutFactor: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly meanDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lead: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly threadFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly headFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, "ratio">;
export declare const torqueFromNutFactor: import("../formula/formula.js").Formula<{
    readonly nutFactor: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly preload: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "torque">;
export declare const looseningTorque: import("../formula/formula.js").Formula<{
    readonly preload: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly pitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pitchDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly threadFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly headFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly prevailingTorque: {
        readonly kind: "torque";
        readonly min: 0;
        readonly default: "0 N m";
    };
}, {
    readonly torque: "torque";
    readonly state: {
        readonly oneOf: readonly ["selfHolding", "selfLoosening"];
    };
}>;
