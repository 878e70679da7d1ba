export declare const takeUp: import("../formula/formula.js").Formula<{
    readonly workingLength: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pretension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly beddingStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly creepStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly slack: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly temperatureRise: "temperatureDifference";
    readonly frameExpansion: "thermalExpansion";
    readonly cordExpansion: "thermalExpansion";
}, {
    readonly total: "length";
    readonly elastic: "length";
    readonly bedding: "length";
    readonly creep: "length";
    readonly slack: "length";
    readonly heat: "length";
}>;
export declare const thermalTension: import("../formula/formula.js").Formula<{
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly temperatureRise: "temperatureDifference";
    readonly frameExpansion: "thermalExpansion";
    readonly cordExpansion: "thermalExpansion";
}, "force">;
export declare const tensionerTakeUp: import("../formula/formula.js").Formula<{
    readonly method: {
        readonly oneOf: readonly ["endPull", "spanIdler", "returnIdler", "centreDistance", "splitDrum"];
    };
    readonly travel: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly centreDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly takeUp: "length";
    readonly gain: "ratio";
}>;
export declare const tensionPerScrewTurn: import("../formula/formula.js").Formula<{
    readonly lead: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly gain: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly workingLength: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
}, "force">;
