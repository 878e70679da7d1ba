export declare const frustumStiffness: import("../formula/formula.js").Formula<{
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly narrowDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly halfAngle: {
        readonly kind: "angle";
        readonly above: 0;
        readonly below: "60 deg";
        readonly default: "30 deg";
    };
}, "linearStiffness">;
export declare const memberCompliance: import("../formula/formula.js").Formula<{
    readonly layers: {
        readonly list: {
            readonly fields: {
                readonly thickness: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly modulus: {
                    readonly kind: "modulus";
                    readonly above: 0;
                };
                readonly outerDiameter: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly holeDiameter: {
                    readonly kind: "length";
                    readonly above: 0;
                };
            };
        };
    };
    readonly headBearing: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly nutBearing: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly end: {
        readonly oneOf: readonly ["nut", "tapped"];
        readonly default: "nut";
    };
    readonly halfAngle: {
        readonly kind: "angle";
        readonly above: 0;
        readonly below: "60 deg";
        readonly default: "30 deg";
    };
}, {
    readonly compliance: "linearCompliance";
    readonly layerCompliances: {
        readonly list: "linearCompliance";
    };
    readonly grip: "length";
}>;
export declare const coneHalfAngle: import("../formula/formula.js").Formula<{
    readonly grip: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly outerDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly end: {
        readonly oneOf: readonly ["nut", "tapped"];
    };
}, "angle">;
export declare const memberStiffnessFit: import("../formula/formula.js").Formula<{
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly grip: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly material: {
        readonly oneOf: readonly ["steel", "aluminium", "castIron", "general"];
        readonly default: "general";
    };
}, "linearStiffness">;
