export declare const nutPocketWall: import("../formula/formula.js").Formula<{
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
    readonly wall: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly meanPressure: "stress";
    readonly wallTension: "stress";
}>;
export declare const nutPullThrough: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly acrossFlats: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cover: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly sides: {
        readonly oneOf: readonly ["six", "three"];
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly area: "area";
    readonly shearStress: "stress";
    readonly pullThroughForce: "force";
}>;
export declare const pocketRoof: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly supportDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly loadDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly poissonRatio: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 0.5;
        readonly default: 0.38;
    };
}, {
    readonly edgeStress: "stress";
    readonly middleStress: "stress";
}>;
