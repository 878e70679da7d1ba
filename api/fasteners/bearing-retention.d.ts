export declare const bearingShoulder: import("../formula/formula.js").Formula<{
    readonly thrust: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
        readonly default: "0 N";
    };
    readonly seatDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly contactDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lipBore: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly compressiveStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly bendingStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly pressure: "stress";
    readonly shearStress: "stress";
    readonly bendingStress: "stress";
    readonly capacity: "force";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly governedBy: {
        readonly oneOf: readonly ["crushing", "shear", "bending"];
    };
}>;
export declare const bearingCap: import("../formula/formula.js").Formula<{
    readonly thrust: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly screws: {
        readonly kind: "count";
        readonly min: 2;
        readonly whole: true;
    };
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly loadFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly below: 1;
    };
    readonly screwCapacity: {
        readonly kind: "force";
        readonly above: 0;
    };
}, {
    readonly screwLoad: "force";
    readonly faceLoad: "force";
    readonly liftThrust: "force";
    readonly capacity: "force";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly governedBy: {
        readonly oneOf: readonly ["lifting", "screws"];
    };
    readonly state: {
        readonly oneOf: readonly ["closed", "lifts"];
    };
}>;
