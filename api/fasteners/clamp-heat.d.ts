export declare const clampLoadThroughHeat: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly elasticCompliance: {
        readonly kind: "linearCompliance";
        readonly min: 0;
    };
    readonly creepingCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly creep: {
        readonly curve: readonly ["time", "ratio"];
    };
    readonly speedUp: {
        readonly curve: readonly ["temperatureDifference", "ratio"];
    };
    readonly softening: {
        readonly curve: readonly ["temperatureDifference", "ratio"];
    };
    readonly mismatchPerKelvin: {
        readonly kind: "length";
    };
    readonly spells: {
        readonly list: {
            readonly fields: {
                readonly duration: {
                    readonly kind: "time";
                    readonly above: 0;
                };
                readonly temperatureChange: {
                    readonly kind: "temperatureDifference";
                };
            };
        };
    };
}, {
    readonly startLoads: {
        readonly list: "force";
    };
    readonly endLoads: {
        readonly list: "force";
    };
    readonly lowest: "force";
    readonly state: {
        readonly oneOf: readonly ["clamped", "opens"];
    };
}>;
