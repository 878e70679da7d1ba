export declare const printLife: import("../formula/formula.js").Formula<{
    readonly largest: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly strength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly ratioAtMillion: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
}, {
    readonly cycles: "count";
    readonly share: "ratio";
    readonly state: {
        readonly oneOf: readonly ["byCycles", "atFirstLoad"];
    };
}>;
export declare const cumulativeDamage: import("../formula/formula.js").Formula<{
    readonly cycles: {
        readonly list: {
            readonly kind: "count";
            readonly min: 0;
        };
    };
    readonly lives: {
        readonly list: {
            readonly kind: "count";
            readonly above: 0;
        };
    };
    readonly allowed: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 1;
    };
}, {
    readonly damage: "ratio";
    readonly repeats: {
        readonly kind: "count";
        readonly infinite: true;
    };
    readonly worstShare: "ratio";
    readonly state: {
        readonly oneOf: readonly ["holds", "fails"];
    };
}>;
