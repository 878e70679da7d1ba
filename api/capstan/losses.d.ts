export declare const strokeLosses: import("../formula/formula.js").Formula<{
    readonly taut: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly slack: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinionTravel: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly shaftForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly bearingFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly bearingRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly bendingLoss: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, {
    readonly creep: "energy";
    readonly bearings: "energy";
    readonly bending: "energy";
}>;
export declare const driveLosses: import("../formula/formula.js").Formula<{
    readonly taut: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly slack: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly shaftForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly bearingFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly bearingRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly bendingLoss: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, {
    readonly creep: "ratio";
    readonly bearings: "ratio";
    readonly bending: "ratio";
}>;
