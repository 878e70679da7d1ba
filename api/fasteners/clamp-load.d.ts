export declare const clampLoadPowerLaw: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly elasticCompliance: {
        readonly kind: "linearCompliance";
        readonly min: 0;
    };
    readonly creepingCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly creepCoefficient: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
}, {
    readonly clampLoad: "force";
    readonly share: "ratio";
}>;
export declare const clampLoadQuasiElastic: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly elasticCompliance: {
        readonly kind: "linearCompliance";
        readonly min: 0;
    };
    readonly creepingCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly creepRatio: {
        readonly kind: "ratio";
        readonly min: 1;
    };
}, {
    readonly clampLoad: "force";
    readonly share: "ratio";
}>;
export declare const clampLoadOverTime: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly elasticCompliance: {
        readonly kind: "linearCompliance";
        readonly min: 0;
    };
    readonly creepingLayers: {
        readonly list: {
            readonly fields: {
                readonly compliance: {
                    readonly kind: "linearCompliance";
                    readonly above: 0;
                };
                readonly creep: {
                    readonly curve: readonly ["time", "ratio"];
                };
            };
        };
    };
    readonly embedding: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
    };
    readonly retightenings: {
        readonly list: {
            readonly kind: "time";
            readonly above: 0;
        };
        readonly least: 0;
        readonly optional: true;
    };
    readonly times: {
        readonly list: {
            readonly kind: "time";
            readonly min: 0;
        };
    };
}, {
    readonly clampLoads: {
        readonly list: "force";
    };
    readonly lowest: "force";
    readonly state: {
        readonly oneOf: readonly ["clamped", "opens"];
    };
}>;
export declare const embeddingLoss: import("../formula/formula.js").Formula<{
    readonly embedding: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly boltCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly memberCompliance: {
        readonly kind: "linearCompliance";
        readonly min: 0;
    };
}, "force">;
