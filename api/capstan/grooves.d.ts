export declare const vGrooveFriction: import("../formula/formula.js").Formula<{
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly grooveAngle: {
        readonly kind: "angle";
        readonly above: 0;
        readonly max: "180 deg";
    };
}, {
    readonly effectiveFriction: "ratio";
    readonly seatingFriction: "ratio";
}>;
export declare const roundGrooveFriction: import("../formula/formula.js").Formula<{
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly undercutAngle: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "120 deg";
        readonly default: "0 deg";
    };
    readonly seatAngle: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "120 deg";
        readonly default: "0 deg";
    };
}, "ratio">;
export declare const helixWrap: import("../formula/formula.js").Formula<{
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly groovePitch: {
        readonly kind: "length";
        readonly min: 0;
    };
}, {
    readonly leadAngle: "angle";
    readonly frictionFactor: "ratio";
    readonly curvatureRadius: "length";
    readonly lengthPerTurn: "length";
}>;
export declare const thickCordFriction: import("../formula/formula.js").Formula<{
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly grooveRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cordDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
}, "ratio">;
