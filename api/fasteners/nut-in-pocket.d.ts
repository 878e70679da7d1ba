export declare const nutInPocket: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly acrossFlats: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly flats: {
        readonly kind: "count";
        readonly min: 2;
        readonly max: 6;
        readonly whole: true;
    };
    readonly clearance: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly compressiveStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly cornerPressure: {
        readonly kind: "stress";
        readonly infinite: true;
    };
    readonly plasticPressure: {
        readonly kind: "stress";
        readonly infinite: true;
    };
    readonly yieldTorque: "torque";
    readonly roundingTorque: "torque";
    readonly flatForce: {
        readonly kind: "force";
        readonly infinite: true;
    };
    readonly contactWidth: "length";
    readonly freeAngle: "angle";
    readonly holdAngle: "angle";
    readonly state: {
        readonly oneOf: readonly ["held", "cornersYield", "roundsOut", "spinsFree"];
    };
}>;
export declare const looseNutPressure: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly acrossFlats: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly flats: {
        readonly kind: "count";
        readonly min: 2;
        readonly max: 6;
        readonly whole: true;
    };
    readonly clearance: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly wallModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly wallDepth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly compressiveStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly cornerPressure: {
        readonly kind: "stress";
        readonly infinite: true;
    };
    readonly contactWidth: "length";
    readonly turn: "angle";
    readonly state: {
        readonly oneOf: readonly ["elastic", "digsIn", "turnsThrough"];
    };
}>;
