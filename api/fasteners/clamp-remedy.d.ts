export declare const springWasher: import("../formula/formula.js").Formula<{
    readonly washerCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly flatForce: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly boltCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
}, {
    readonly elasticCompliance: "linearCompliance";
    readonly state: {
        readonly oneOf: readonly ["springs", "flattened"];
    };
}>;
export declare const compressionSleeve: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly sleeveCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly printCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly shortfall: "length";
}, {
    readonly sleeveLoad: "force";
    readonly printLoad: "force";
    readonly state: {
        readonly oneOf: readonly ["sleeveCarries", "shared", "sleeveTooShort", "printLoose"];
    };
}>;
