export declare const lewisRootStress: import("../formula/formula.js").Formula<{
    readonly tangentialForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly module: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly faceWidth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly formFactor: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly pitchSpeed: {
        readonly kind: "velocity";
        readonly min: 0;
        readonly default: "0 m/s";
    };
}, {
    readonly rootStress: "stress";
    readonly dynamicFactor: "ratio";
}>;
export declare const lewisFormFactor: import("../formula/formula.js").Formula<{
    readonly teeth: {
        readonly kind: "count";
        readonly min: 12;
        readonly whole: true;
    };
}, "ratio">;
export declare const beltTeethInMesh: import("../formula/formula.js").Formula<{
    readonly smallTeeth: {
        readonly kind: "count";
        readonly min: 6;
        readonly whole: true;
    };
    readonly largeTeeth: {
        readonly kind: "count";
        readonly min: 6;
        readonly whole: true;
    };
    readonly pitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly centreDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly exact: "ratio";
    readonly teethInMesh: "count";
    readonly toothFactor: "ratio";
}>;
export declare const beltRating: import("../formula/formula.js").Formula<{
    readonly allowableTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly massPerLength: {
        readonly kind: "massPerLength";
        readonly min: 0;
    };
    readonly referenceWidth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly speed: {
        readonly kind: "velocity";
        readonly above: 0;
    };
    readonly toothFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly pitchRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly power: "power";
    readonly torque: "torque";
    readonly widthFactor: "ratio";
}>;
export declare const beltToothShear: import("../formula/formula.js").Formula<{
    readonly tangentialForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly teethInMesh: {
        readonly kind: "count";
        readonly min: 1;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly rootWidth: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "stress">;
export declare const backlashAngle: import("../formula/formula.js").Formula<{
    readonly backlash: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly pitchRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "angle">;
export declare const gearBacklash: import("../formula/formula.js").Formula<{
    readonly module: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly centreDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly normal: "length";
    readonly alongPitchCircle: "length";
}>;
