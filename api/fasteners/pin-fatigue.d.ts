export declare const pinEnduranceLimit: import("../formula/formula.js").Formula<{
    readonly tensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bending: {
        readonly oneOf: readonly ["rotating", "fixedDirection"];
        readonly default: "fixedDirection";
    };
    readonly surface: {
        readonly oneOf: readonly ["ground", "machined", "hotRolled", "forged"];
        readonly default: "ground";
    };
    readonly reliability: {
        readonly oneOf: readonly ["50 %", "90 %", "95 %", "99 %", "99.9 %"];
        readonly default: "50 %";
    };
}, {
    readonly enduranceLimit: "stress";
    readonly shearEnduranceLimit: "stress";
    readonly surfaceFactor: "ratio";
    readonly sizeFactor: "ratio";
}>;
export declare const goodmanReserve: import("../formula/formula.js").Formula<{
    readonly largestStress: "stress";
    readonly smallestStress: "stress";
    readonly enduranceLimit: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly tensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly alternatingStress: "stress";
    readonly meanStress: "stress";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
}>;
