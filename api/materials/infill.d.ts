export declare const cellularBounds: import("../formula/formula.js").Formula<{
    readonly relativeDensity: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly strength: {
        readonly kind: "stress";
        readonly min: 0;
    };
}, {
    readonly modulusBending: "modulus";
    readonly modulusStretching: "modulus";
    readonly modulusLimit: "modulus";
    readonly strengthBending: "stress";
    readonly strengthStretching: "stress";
}>;
export declare const walledBar: import("../formula/formula.js").Formula<{
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly sideWall: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly topWall: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wallModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly coreModulus: {
        readonly kind: "modulus";
        readonly min: 0;
    };
    readonly relativeDensity: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
}, {
    readonly wallShare: "ratio";
    readonly massShare: "ratio";
    readonly axialRigidity: "axialRigidity";
    readonly bendingRigidity: "bendingRigidity";
    readonly bendingShare: "ratio";
    readonly sectionModulus: "sectionModulus";
}>;
export declare const fastenerZone: import("../formula/formula.js").Formula<{
    readonly holeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wallCount: {
        readonly kind: "count";
        readonly min: 1;
    };
    readonly lineWidth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly relativeDensity: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly neededDiameter: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly solidDiameter: "length";
    readonly needed: "length";
    readonly wallsNeeded: "count";
    readonly state: {
        readonly oneOf: readonly ["solid", "denseInfill", "refused"];
    };
}>;
