export declare const pressFit: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diametralInterference: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly bossDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinBore: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
    };
    readonly boss: {
        readonly fields: {
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly poissonRatio: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 0.5;
            };
        };
    };
    readonly pin: {
        readonly fields: {
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly poissonRatio: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 0.5;
            };
        };
    };
}, {
    readonly pressure: "stress";
    readonly boreHoopStress: "stress";
    readonly boreVonMises: "stress";
    readonly boreTresca: "stress";
    readonly outsideHoopStress: "stress";
    readonly pinHoopStress: "stress";
    readonly outsideGrowth: "length";
    readonly pinShare: "ratio";
}>;
export declare const bossWallStress: import("../formula/formula.js").Formula<{
    readonly pressure: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bossDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly radius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly hoopStress: "stress";
    readonly radialStress: "stress";
}>;
export declare const effectiveBossDiameter: import("../formula/formula.js").Formula<{
    readonly freeRadii: {
        readonly list: {
            readonly kind: "length";
            readonly above: 0;
        };
    };
}, "length">;
export declare const allowableInterference: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bossDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinBore: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
    };
    readonly boss: {
        readonly fields: {
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly poissonRatio: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 0.5;
            };
        };
    };
    readonly pin: {
        readonly fields: {
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly poissonRatio: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 0.5;
            };
        };
    };
    readonly allowableInLayers: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly allowableAcrossLayers: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly boreAxis: {
        readonly oneOf: readonly ["acrossLayers", "inLayers"];
    };
    readonly criterion: {
        readonly oneOf: readonly ["hoop", "vonMises", "tresca"];
        readonly default: "vonMises";
    };
}, {
    readonly diametralInterference: "length";
    readonly pressure: "stress";
    readonly governedBy: {
        readonly oneOf: readonly ["inLayers", "acrossLayers"];
    };
}>;
