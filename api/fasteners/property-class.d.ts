export declare const propertyClass: import("./size-table.js").SizeTable<{
    readonly proofStress: readonly ["stress", "MPa"];
    readonly yieldStrength: readonly ["stress", "MPa"];
    readonly tensileStrength: readonly ["stress", "MPa"];
}, "4.8" | "5.8" | "6.8" | "8.8" | "10.9" | "12.9" | "A2-50" | "A2-70" | "A2-80" | "A4-50" | "A4-70" | "A4-80">;
export declare const stainlessBreakingTorque: import("./size-table.js").SizeTable<{
    readonly class50: readonly ["torque", "N m"];
    readonly class70: readonly ["torque", "N m"];
    readonly class80: readonly ["torque", "N m"];
}, "M1.6" | "M2" | "M2.5" | "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const boltStrength: import("../formula/formula.js").Formula<{
    readonly thread: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly stressArea: {
                readonly kind: "area";
                readonly above: 0;
            };
            readonly rootArea: {
                readonly kind: "area";
                readonly above: 0;
            };
        };
    };
    readonly bolt: {
        readonly fields: {
            readonly proofStress: {
                readonly kind: "stress";
                readonly above: 0;
            };
            readonly yieldStrength: {
                readonly kind: "stress";
                readonly above: 0;
            };
            readonly tensileStrength: {
                readonly kind: "stress";
                readonly above: 0;
            };
        };
    };
    readonly shearRatio: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 0.6;
    };
}, {
    readonly proofLoad: "force";
    readonly yieldLoad: "force";
    readonly breakingLoad: "force";
    readonly threadShearLoad: "force";
    readonly shankShearLoad: "force";
}>;
