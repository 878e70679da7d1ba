export declare const parallelKeySize: import("./size-table.js").SizeTable<{
    readonly shaftAbove: readonly ["length", "mm"];
    readonly shaftUpTo: readonly ["length", "mm"];
    readonly width: readonly ["length", "mm"];
    readonly height: readonly ["length", "mm"];
    readonly shaftDepth: readonly ["length", "mm"];
    readonly hubDepth: readonly ["length", "mm"];
}, "2x2" | "3x3" | "4x4" | "5x5" | "6x6" | "8x7" | "10x8" | "12x8" | "14x9">;
export declare const parallelKey: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly direction: {
        readonly oneOf: readonly ["oneWay", "reversing"];
    };
    readonly shaftDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly shaftDepth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly hubDepth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly keys: {
        readonly kind: "count";
        readonly min: 1;
        readonly max: 2;
        readonly whole: true;
        readonly default: 1;
    };
    readonly hub: {
        readonly fields: {
            readonly material: {
                readonly oneOf: readonly ["metal", "printed"];
            };
            readonly outerDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly bearingStrength: {
                readonly kind: "stress";
                readonly above: 0;
            };
            readonly tensileStrength: {
                readonly kind: "stress";
                readonly above: 0;
            };
        };
    };
    readonly shaftBearingStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly keyShearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly force: "force";
    readonly hubPressure: "stress";
    readonly shaftPressure: "stress";
    readonly keyShear: "stress";
    readonly hubWallTension: "stress";
    readonly torqueCapacity: "torque";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly governedBy: {
        readonly oneOf: readonly ["hubCrushing", "shaftCrushing", "keyShear", "hubWall"];
    };
}>;
