export declare const interferenceChange: import("../formula/formula.js").Formula<{
    readonly diametralInterference: "length";
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bossExpansion: "thermalExpansion";
    readonly pinExpansion: "thermalExpansion";
    readonly temperatureChange: "temperatureDifference";
    readonly swelling: {
        readonly kind: "strain";
        readonly default: 0;
    };
}, {
    readonly diametralInterference: "length";
    readonly state: {
        readonly oneOf: readonly ["tight", "loose"];
    };
}>;
export declare const releaseTemperature: import("../formula/formula.js").Formula<{
    readonly diametralInterference: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bossExpansion: "thermalExpansion";
    readonly pinExpansion: "thermalExpansion";
}, {
    readonly temperatureChange: {
        readonly kind: "temperatureDifference";
        readonly infinite: true;
    };
    readonly releases: {
        readonly oneOf: readonly ["onHeating", "onCooling", "never"];
    };
}>;
export declare const roughnessLoss: import("../formula/formula.js").Formula<{
    readonly boreRoughness: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly pinRoughness: {
        readonly kind: "length";
        readonly min: 0;
    };
}, "length">;
