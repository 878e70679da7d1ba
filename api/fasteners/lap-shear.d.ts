export declare const lapShear: import("../formula/formula.js").Formula<{
    readonly force: "force";
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly overlap: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lap: {
        readonly oneOf: readonly ["single", "double"];
    };
    readonly inner: {
        readonly fields: {
            readonly thickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly thermalExpansion: {
                readonly kind: "thermalExpansion";
                readonly default: "0 1/K";
            };
        };
    };
    readonly outer: {
        readonly fields: {
            readonly thickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly thermalExpansion: {
                readonly kind: "thermalExpansion";
                readonly default: "0 1/K";
            };
        };
    };
    readonly bondThickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly shearModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly temperatureChange: {
        readonly kind: "temperatureDifference";
        readonly default: "0 K";
    };
    readonly at: {
        readonly kind: "length";
        readonly default: "0 mm";
    };
}, {
    readonly averageStress: "stress";
    readonly stress: "stress";
    readonly innerEndStress: "stress";
    readonly outerEndStress: "stress";
    readonly thermalEndStress: "stress";
    readonly shearLagLength: "length";
}>;
export declare const pottedFerrule: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly cordDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly boreDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cordRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly socketRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly shearModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly held: {
        readonly oneOf: readonly ["mouth", "farEnd"];
    };
}, {
    readonly averageStress: "stress";
    readonly mouthStress: "stress";
    readonly endStress: "stress";
    readonly elasticLimit: "force";
    readonly plasticLimit: "force";
    readonly longBondLimit: "force";
    readonly shearLagLength: "length";
}>;
export declare const coneSocket: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly mouthDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly halfAngle: {
        readonly kind: "angle";
        readonly above: 0;
        readonly below: "45 deg";
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly socketDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly wideDiameter: "length";
    readonly pressure: "stress";
    readonly frictionStress: "stress";
    readonly hoopStress: "stress";
    readonly state: {
        readonly oneOf: readonly ["staysIn", "releases"];
    };
}>;
