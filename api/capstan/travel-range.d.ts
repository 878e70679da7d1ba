export declare const singleTrackTravel: import("../formula/formula.js").Formula<{
    readonly drumWrapAngle: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly anchorGap: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly residualWrap: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "angle">;
export declare const residualWrap: import("../formula/formula.js").Formula<{
    readonly drumWrap: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly travel: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "angle">;
