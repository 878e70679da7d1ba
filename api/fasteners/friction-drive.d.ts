export declare const faceFrictions: {
    steelOnSteel: import("../formula/provenance.js").Property<"ratio">;
    printOnSteel: import("../formula/provenance.js").Property<"ratio">;
    printOnPrint: import("../formula/provenance.js").Property<"ratio">;
};
export declare const frictionFaceTorque: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly outerDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly innerDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly pressure: {
        readonly oneOf: readonly ["even", "worn"];
    };
}, "torque">;
export declare const frictionDrive: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly faces: {
        readonly list: {
            readonly fields: {
                readonly outerDiameter: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly innerDiameter: {
                    readonly kind: "length";
                    readonly min: 0;
                };
                readonly friction: {
                    readonly kind: "ratio";
                    readonly above: 0;
                };
                readonly surface: {
                    readonly oneOf: readonly ["metal", "printed"];
                };
                readonly allowablePressure: {
                    readonly kind: "stress";
                    readonly above: 0;
                };
            };
        };
    };
    readonly path: {
        readonly oneOf: readonly ["oneAfterAnother", "shared"];
    };
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
}, {
    readonly slipTorque: "torque";
    readonly faceTorques: {
        readonly list: "torque";
    };
    readonly pressures: {
        readonly list: "stress";
    };
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly reserveWanted: "ratio";
    readonly state: {
        readonly oneOf: readonly ["frictionDrives", "keyNeeded", "facesCrushed"];
    };
}>;
