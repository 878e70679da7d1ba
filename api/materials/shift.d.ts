export declare const arrheniusShift: import("../formula/formula.js").Formula<{
    readonly temperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly reference: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly activationEnergy: {
        readonly kind: "activationEnergy";
        readonly min: 0;
    };
    readonly glassTransition: {
        readonly kind: "glassTransitionTemperature";
        readonly above: 0;
        readonly optional: true;
    };
}, "ratio">;
export declare const wlfShift: import("../formula/formula.js").Formula<{
    readonly temperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly reference: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly c1: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 17.44;
    };
    readonly c2: {
        readonly kind: "temperatureDifference";
        readonly above: 0;
        readonly default: "51.6 K";
    };
}, "ratio">;
export declare const timeTemperatureShift: import("../formula/formula.js").Formula<{
    readonly temperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly reference: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly glassTransition: {
        readonly kind: "glassTransitionTemperature";
        readonly above: 0;
    };
    readonly activationEnergy: {
        readonly kind: "activationEnergy";
        readonly min: 0;
    };
    readonly c1: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 17.44;
    };
    readonly c2: {
        readonly kind: "temperatureDifference";
        readonly above: 0;
        readonly default: "51.6 K";
    };
}, {
    readonly shift: "ratio";
    readonly law: {
        readonly oneOf: readonly ["arrhenius", "wlf"];
    };
}>;
export declare const equivalentTime: import("../formula/formula.js").Formula<{
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly shift: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "time">;
export declare const equivalentTimeOfHistory: import("../formula/formula.js").Formula<{
    readonly durations: {
        readonly list: {
            readonly kind: "time";
            readonly min: 0;
        };
    };
    readonly temperatures: {
        readonly list: {
            readonly kind: "temperature";
            readonly above: 0;
        };
    };
    readonly reference: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly activationEnergy: {
        readonly kind: "activationEnergy";
        readonly min: 0;
    };
    readonly glassTransition: {
        readonly kind: "glassTransitionTemperature";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly time: "time";
    readonly hottestShare: "ratio";
}>;
export declare const ageingShift: import("../formula/formula.js").Formula<{
    readonly age: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly referenceAge: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly shiftRate: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1.2;
        readonly default: 0.85;
    };
}, "ratio">;
export declare const effectiveTimeUnderAgeing: import("../formula/formula.js").Formula<{
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly age: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly shiftRate: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1.2;
        readonly default: 0.85;
    };
}, "time">;
