import { type Given, type Si } from '../formula/index.js';
import type { NetworkLink } from './network.js';
export declare const SURROUNDINGS: {
    readonly air: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "200 degC";
    };
    readonly radiant: {
        readonly kind: "temperature";
        readonly min: 0;
        readonly optional: true;
    };
    readonly altitude: {
        readonly kind: "length";
        readonly min: "-500 m";
        readonly max: "11 km";
        readonly default: "0 m";
    };
    readonly airSpeed: {
        readonly kind: "velocity";
        readonly min: 0;
        readonly default: "0 m/s";
    };
};
export type Surroundings = Given<typeof SURROUNDINGS>;
export interface SurroundingsNumbers {
    readonly air: number;
    readonly radiant: number;
    readonly pressure: number;
    readonly airSpeed: number;
}
export declare const surroundingsNumbers: (x: Si<typeof SURROUNDINGS>) => SurroundingsNumbers;
export type SurfaceShape = 'verticalPlate' | 'horizontalCylinder' | 'plateUp' | 'plateDown' | 'tiltedPlate';
export declare const CONVECTION_SCATTER = 0.2;
export declare function convectionAt(shape: SurfaceShape, length: number, surface: number, { air, pressure, airSpeed }: SurroundingsNumbers, tilt?: number, turning?: number): number;
export declare const radiationAt: (emissivity: number, surface: number, radiant: number) => number;
declare const SURFACE: {
    readonly area: {
        readonly kind: "area";
        readonly above: 0;
    };
    readonly shape: {
        readonly oneOf: readonly ["verticalPlate", "horizontalCylinder", "plateUp", "plateDown", "tiltedPlate"];
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly tilt: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "90 deg";
        readonly default: "0 deg";
    };
    readonly emissivity: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly viewFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly emissivityScatter: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly default: 0.1;
    };
    readonly surroundings: {
        readonly fields: {
            readonly air: {
                readonly kind: "temperature";
                readonly min: "-60 degC";
                readonly max: "200 degC";
            };
            readonly radiant: {
                readonly kind: "temperature";
                readonly min: 0;
                readonly optional: true;
            };
            readonly altitude: {
                readonly kind: "length";
                readonly min: "-500 m";
                readonly max: "11 km";
                readonly default: "0 m";
            };
            readonly airSpeed: {
                readonly kind: "velocity";
                readonly min: 0;
                readonly default: "0 m/s";
            };
        };
    };
};
export type CooledSurface = Given<typeof SURFACE>;
export declare function cooledSurface(node: string, surface: CooledSurface, names?: {
    readonly air?: string;
    readonly radiant?: string;
}): NetworkLink[];
export {};
