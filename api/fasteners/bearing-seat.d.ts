export declare const metalHousingTransfer: import("../formula/provenance.js").Property<"ratio">;
export declare const bearingSeat: import("../formula/formula.js").Formula<{
    readonly outsideDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly racewayDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diametralInterference: "length";
    readonly internalClearance: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly innerRacewayGrowth: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
    };
    readonly housing: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
            };
            readonly poissonRatio: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 0.5;
            };
            readonly thermalExpansion: "thermalExpansion";
        };
    };
    readonly ring: {
        readonly fields: {
            readonly modulus: {
                readonly kind: "modulus";
                readonly above: 0;
                readonly default: "207 GPa";
            };
            readonly poissonRatio: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 0.5;
                readonly default: 0.3;
            };
            readonly thermalExpansion: {
                readonly kind: "thermalExpansion";
                readonly default: "12 ppm/K";
            };
        };
    };
    readonly temperatureChange: "temperatureDifference";
    readonly innerRingWarmer: {
        readonly kind: "temperatureDifference";
        readonly min: 0;
        readonly default: "0 K";
    };
    readonly swelling: {
        readonly kind: "strain";
        readonly default: 0;
    };
    readonly transfer: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
        readonly optional: true;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly load: {
        readonly oneOf: readonly ["standsStill", "goesRound"];
    };
}, {
    readonly diametralInterference: "length";
    readonly pressure: "stress";
    readonly housingHoopStress: "stress";
    readonly transfer: "ratio";
    readonly clearanceLeft: "length";
    readonly gripTorque: "torque";
    readonly releaseChange: {
        readonly kind: "temperatureDifference";
        readonly infinite: true;
    };
    readonly seat: {
        readonly oneOf: readonly ["tight", "looseAllowed", "ringCreeps"];
    };
    readonly clearance: {
        readonly oneOf: readonly ["runsFree", "preloaded"];
    };
}>;
