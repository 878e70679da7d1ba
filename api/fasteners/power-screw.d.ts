export declare const powerScrew: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly meanDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lead: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly halfThreadAngle: {
        readonly kind: "angle";
        readonly min: 0;
        readonly below: "45 deg";
        readonly default: "30 deg";
    };
    readonly threadFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly collarFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly collarDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
}, {
    readonly raisingTorque: "torque";
    readonly threadTorque: "torque";
    readonly collarTorque: "torque";
    readonly loweringTorque: "torque";
    readonly efficiency: "ratio";
    readonly state: {
        readonly oneOf: readonly ["selfLocking", "overhauls"];
    };
}>;
