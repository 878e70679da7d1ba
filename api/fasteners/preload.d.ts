export declare const preloadFromTorque: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
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
    readonly preload: "force";
    readonly state: {
        readonly oneOf: readonly ["tightened", "prevailingTorqueNotOvercome"];
    };
}>;
export declare const preloadAtUtilisation: import("../formula/formula.js").Formula<{
    readonly thread: {
        readonly fields: {
            readonly pitch: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly pitchDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly stressArea: {
                readonly kind: "area";
                readonly above: 0;
            };
        };
    };
    readonly yieldStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly threadFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly utilisation: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 0.9;
    };
    readonly torsion: {
        readonly oneOf: readonly ["plastic", "elastic"];
        readonly default: "plastic";
    };
}, "force">;
export declare const preloadBand: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly above: 0;
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
    readonly lowestFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly highestFriction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly wrenchError: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly below: 1;
        readonly default: 0.05;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly lowest: "force";
    readonly highest: "force";
    readonly tighteningFactor: "ratio";
}>;
