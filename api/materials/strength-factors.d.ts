export declare const ROOM = 296.15;
export declare const amorphousStrengthFactor: import("../formula/formula.js").Formula<{
    readonly temperature: {
        readonly kind: "temperature";
        readonly min: 0;
    };
    readonly glassTransition: {
        readonly kind: "glassTransitionTemperature";
        readonly above: 0;
    };
    readonly margin: {
        readonly kind: "temperatureDifference";
        readonly min: 0;
        readonly default: "15 K";
    };
}, {
    readonly factor: "ratio";
    readonly limit: "temperature";
    readonly state: {
        readonly oneOf: readonly ["usable", "aboveLimit"];
    };
}>;
export declare const tabulatedStrengthFactor: import("../formula/formula.js").Formula<{
    readonly temperature: {
        readonly kind: "temperature";
        readonly min: 0;
    };
    readonly temperatures: {
        readonly list: {
            readonly kind: "temperature";
            readonly min: 0;
        };
        readonly least: 2;
    };
    readonly shares: {
        readonly list: {
            readonly kind: "ratio";
            readonly min: 0;
            readonly max: 1;
        };
        readonly least: 2;
    };
}, {
    readonly factor: "ratio";
    readonly state: {
        readonly oneOf: readonly ["usable", "aboveTable"];
    };
}>;
export declare const durationFactor: import("../formula/formula.js").Formula<{
    readonly duration: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly kept1000Hours: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly kept1Year: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
}, "ratio">;
export declare const fatigueFactor: import("../formula/formula.js").Formula<{
    readonly cycles: {
        readonly kind: "count";
        readonly min: 1;
    };
    readonly ratioAtMillion: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
}, "ratio">;
export declare const moistureFactor: import("../formula/formula.js").Formula<{
    readonly moisture: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly conditioned: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly saturated: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly conditionedShare: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly saturatedShare: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
}, "ratio">;
export declare const deratedStrength: import("../formula/formula.js").Formula<{
    readonly strength: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly direction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly temperature: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly duration: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly moisture: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly fatigue: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly safetyFactor: {
        readonly kind: "ratio";
        readonly min: 1;
    };
}, "stress">;
