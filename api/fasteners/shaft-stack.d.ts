export declare const clampedShaft: import("../formula/formula.js").Formula<{
    readonly sections: {
        readonly list: {
            readonly fields: {
                readonly length: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly outerDiameter: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly innerDiameter: {
                    readonly kind: "length";
                    readonly min: 0;
                };
                readonly modulus: {
                    readonly kind: "modulus";
                    readonly above: 0;
                };
                readonly shearModulus: {
                    readonly kind: "modulus";
                    readonly above: 0;
                };
            };
        };
    };
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly moment: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
}, {
    readonly torsionalStiffness: "torsionalStiffness";
    readonly bendingStiffness: "torsionalStiffness";
    readonly gapMoment: "torque";
    readonly slipTorque: "torque";
    readonly joints: {
        readonly oneOf: readonly ["closed", "gaping"];
    };
    readonly drive: {
        readonly oneOf: readonly ["frictionDrives", "keyNeeded"];
    };
}>;
