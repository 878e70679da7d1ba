export declare const printedHolePrior: {
    undersize: import("../formula/provenance.js").Property<"length">;
    scatter: import("../formula/provenance.js").Property<"length">;
};
export declare const interferenceChances: import("../formula/formula.js").Formula<{
    readonly pinDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinScatter: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeScatter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly neededInterference: {
        readonly kind: "length";
        readonly default: "0 mm";
    };
    readonly allowableInterference: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly mean: "length";
    readonly scatter: "length";
    readonly looseChance: "ratio";
    readonly splitChance: "ratio";
    readonly goodChance: "ratio";
}>;
export declare const holeCoupon: import("../formula/formula.js").Formula<{
    readonly diameters: {
        readonly list: {
            readonly kind: "length";
            readonly above: 0;
        };
        readonly least: 3;
    };
    readonly drawn: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly confidence: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
        readonly default: 0.95;
    };
}, {
    readonly mean: "length";
    readonly undersize: "length";
    readonly scatter: "length";
    readonly meanUncertainty: "length";
    readonly scatterUpperLimit: "length";
}>;
