export declare const toleranceStack: import("../formula/formula.js").Formula<{
    readonly parts: {
        readonly list: {
            readonly fields: {
                readonly nominal: "length";
                readonly tolerance: {
                    readonly kind: "length";
                    readonly min: 0;
                };
                readonly sensitivity: {
                    readonly kind: "ratio";
                    readonly default: 1;
                };
                readonly bias: {
                    readonly kind: "length";
                    readonly default: "0 mm";
                };
            };
        };
    };
}, {
    readonly nominal: "length";
    readonly mean: "length";
    readonly worstCase: "length";
    readonly rootOfSquares: "length";
    readonly inflated: "length";
}>;
export declare const uniformStackChance: import("../formula/formula.js").Formula<{
    readonly tolerances: {
        readonly list: {
            readonly kind: "length";
            readonly above: 0;
        };
    };
    readonly limit: "length";
}, {
    readonly exceedance: "ratio";
    readonly normalExceedance: "ratio";
}>;
export declare const toleranceMonteCarlo: import("../formula/formula.js").Formula<{
    readonly parts: {
        readonly list: {
            readonly fields: {
                readonly nominal: "length";
                readonly tolerance: {
                    readonly kind: "length";
                    readonly min: 0;
                };
                readonly spread: {
                    readonly oneOf: readonly ["uniform", "normal", "triangular"];
                };
                readonly sensitivity: {
                    readonly kind: "ratio";
                    readonly default: 1;
                };
            };
        };
    };
    readonly least: "length";
    readonly largest: "length";
    readonly draws: {
        readonly kind: "count";
        readonly min: 100;
        readonly max: 10000000;
        readonly whole: true;
        readonly default: 20000;
    };
    readonly seed: {
        readonly kind: "count";
        readonly whole: true;
        readonly min: 0;
        readonly default: 1;
    };
}, {
    readonly mean: "length";
    readonly scatter: "length";
    readonly tooSmall: "ratio";
    readonly tooLarge: "ratio";
    readonly standardError: "ratio";
}>;
