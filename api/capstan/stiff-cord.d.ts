export declare const stiffCordTautTension: import("../formula/formula.js").Formula<{
    readonly slackTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly bendingRigidity: {
        readonly kind: "bendingRigidity";
        readonly min: 0;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly tautTension: "force";
    readonly tautTensionSecondOrder: "force";
    readonly slackLiftOff: "angle";
    readonly tautLiftOff: "angle";
}>;
export declare const fibreTautTension: import("../formula/formula.js").Formula<{
    readonly slackTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly frictionFactor: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly exponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, {
    readonly tautTension: "force";
    readonly equivalentFriction: "ratio";
}>;
