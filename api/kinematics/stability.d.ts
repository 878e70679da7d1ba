import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
export declare const tipOverSlope: import("../formula/formula.js").Formula<{
    readonly marginToEdge: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "angle">;
export declare const tipOverPush: import("../formula/formula.js").Formula<{
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly marginToEdge: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly pushHeight: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
}, "force">;
export declare const frictionConeUse: import("../formula/formula.js").Formula<{
    readonly normal: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly tangential: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, {
    readonly use: "ratio";
    readonly forceAngle: "angle";
    readonly coneAngle: "angle";
    readonly state: {
        readonly oneOf: readonly ["holds", "slips"];
    };
}>;
declare const STANCE: {
    readonly feet: {
        readonly list: {
            readonly fields: {
                readonly x: "length";
                readonly y: "length";
            };
        };
        readonly least: 1;
    };
    readonly centreOfMass: {
        readonly fields: {
            readonly x: "length";
            readonly y: "length";
            readonly z: {
                readonly kind: "length";
                readonly above: 0;
            };
        };
    };
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
        readonly optional: true;
    };
    readonly pushHeight: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
};
export interface SupportEdge {
    readonly feet: readonly [number, number];
    readonly margin: Quantity<'length'>;
    readonly tipSlope: Quantity<'angle'>;
    readonly tipPush: Quantity<'force'> | undefined;
}
export interface SupportPolygon {
    readonly state: 'stable' | 'tips' | 'noPolygon';
    readonly corners: readonly number[];
    readonly area: Quantity<'area'>;
    readonly edges: readonly SupportEdge[];
    readonly margin: Quantity<'length'> | undefined;
    readonly weakest: SupportEdge | undefined;
}
export declare function supportPolygon(given: Given<typeof STANCE>): SupportPolygon;
export {};
