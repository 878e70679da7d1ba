import { type Given, type Si } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
export declare const fourBarSpeedRatio: import("../formula/formula.js").Formula<{
    readonly crank: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly rocker: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly crankAngle: "angle";
    readonly couplerAngle: "angle";
    readonly rockerAngle: "angle";
}, "ratio">;
export declare const transmissionAngleExtremes: import("../formula/formula.js").Formula<{
    readonly ground: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly crank: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly coupler: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly rocker: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly crankInward: "angle";
    readonly crankOutward: "angle";
}>;
declare const SPECIFICATION: {
    readonly ground: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly crank: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly coupler: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly rocker: {
        readonly kind: "length";
        readonly above: 0;
    };
};
export interface FourBarSpecification extends Given<typeof SPECIFICATION> {
}
export type FourBarAssembly = 'open' | 'crossed';
export interface FourBarPose {
    readonly assembles: true;
    readonly couplerAngle: Quantity<'angle'>;
    readonly rockerAngle: Quantity<'angle'>;
    readonly couplerSpeedRatio: Quantity<'ratio'>;
    readonly rockerSpeedRatio: Quantity<'ratio'>;
    readonly mechanicalAdvantage: Quantity<'ratio'>;
    readonly transmissionAngle: Quantity<'angle'>;
    readonly transmitsWell: boolean;
    readonly changePoint: boolean;
}
export interface FourBarApart {
    readonly assembles: false;
    readonly reason: 'pinTooFar' | 'pinTooNear';
    readonly gap: Quantity<'length'>;
}
export type FourBarMotion = 'crankRocker' | 'doubleCrank' | 'rockerCrank' | 'doubleRocker' | 'tripleRocker' | 'changePoint';
export declare class FourBar {
    readonly si: Si<typeof SPECIFICATION>;
    get motion(): FourBarMotion;
    at(given: {
        readonly crankAngle: In<'angle'>;
        readonly assembly: FourBarAssembly;
    }): FourBarPose | FourBarApart;
}
export declare const fourBar: (given: FourBarSpecification) => FourBar;
export type FourBarSi = Si<typeof SPECIFICATION>;
export declare function rockerFromCrank({ ground, crank, coupler, rocker }: FourBarSi, crankAngle: number, side: -1 | 1): {
    rockerAngle: number;
    couplerAngle: number;
} | 'pinTooFar' | 'pinTooNear';
export declare function crankFromRocker({ ground, crank, coupler, rocker }: FourBarSi, rockerAngle: number, side: -1 | 1): {
    crankAngle: number;
    couplerAngle: number;
} | undefined;
export {};
