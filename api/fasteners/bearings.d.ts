export declare const smallBallBearing: import("./size-table.js").SizeTable<{
    readonly bore: readonly ["length", "mm"];
    readonly outside: readonly ["length", "mm"];
    readonly width: readonly ["length", "mm"];
    readonly dynamicRating: readonly ["force", "N"];
    readonly staticRating: readonly ["force", "N"];
    readonly axialFactor: readonly ["ratio", "1"];
}, "10x19x5" | "10x22x6" | "10x26x8" | "12x21x5">;
export declare const bearingEquivalentLoad: import("../formula/formula.js").Formula<{
    readonly radialLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly axialLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly staticRating: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly axialFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 14;
    };
}, {
    readonly dynamicLoad: "force";
    readonly staticLoad: "force";
    readonly axialCounts: {
        readonly oneOf: readonly ["axialCounts", "radialOnly"];
    };
}>;
export declare const bearingLife: import("../formula/formula.js").Formula<{
    readonly dynamicRating: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly load: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly reliability: {
        readonly oneOf: readonly ["90 %", "95 %", "96 %", "97 %", "98 %", "99 %"];
        readonly default: "90 %";
    };
    readonly speed: {
        readonly kind: "angularVelocity";
        readonly above: 0;
    };
}, {
    readonly turns: "count";
    readonly time: "time";
}>;
export declare const bearingDutyLoad: import("../formula/formula.js").Formula<{
    readonly parts: {
        readonly list: {
            readonly fields: {
                readonly load: {
                    readonly kind: "force";
                    readonly min: 0;
                };
                readonly turns: {
                    readonly kind: "ratio";
                    readonly above: 0;
                };
            };
        };
    };
}, "force">;
export declare const bearingOscillation: import("../formula/formula.js").Formula<{
    readonly halfAmplitude: {
        readonly kind: "angle";
        readonly above: 0;
        readonly max: "180 deg";
    };
    readonly balls: {
        readonly kind: "count";
        readonly min: 3;
        readonly whole: true;
    };
}, {
    readonly turnsPerCycle: "ratio";
    readonly ballPitch: "angle";
    readonly state: {
        readonly oneOf: readonly ["fatigueLife", "falseBrinelling"];
    };
}>;
export declare const bearingStaticSafety: import("../formula/formula.js").Formula<{
    readonly staticRating: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly staticLoad: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly duty: {
        readonly oneOf: readonly ["normal", "shock", "quiet"];
    };
}, {
    readonly safety: "ratio";
    readonly wanted: "ratio";
    readonly state: {
        readonly oneOf: readonly ["enough", "dents"];
    };
}>;
