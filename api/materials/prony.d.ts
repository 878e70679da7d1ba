export declare const pronyRelaxationModulus: import("../formula/formula.js").Formula<{
    readonly longTermModulus: {
        readonly kind: "modulus";
        readonly min: 0;
    };
    readonly terms: {
        readonly list: {
            readonly fields: {
                readonly modulus: {
                    readonly kind: "modulus";
                    readonly min: 0;
                };
                readonly time: {
                    readonly kind: "time";
                    readonly above: 0;
                };
            };
        };
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
}, "modulus">;
export declare const pronyCreepCompliance: import("../formula/formula.js").Formula<{
    readonly instantCompliance: {
        readonly kind: "creepCompliance";
        readonly min: 0;
    };
    readonly terms: {
        readonly list: {
            readonly fields: {
                readonly compliance: {
                    readonly kind: "creepCompliance";
                    readonly min: 0;
                };
                readonly time: {
                    readonly kind: "time";
                    readonly above: 0;
                };
            };
        };
        readonly least: 0;
    };
    readonly viscosity: {
        readonly kind: "dynamicViscosity";
        readonly above: 0;
        readonly optional: true;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
}, "creepCompliance">;
export declare const standardSolidRetardationTime: import("../formula/formula.js").Formula<{
    readonly relaxationTime: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly instantModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly longTermModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
}, "time">;
