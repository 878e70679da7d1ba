export declare function stirlingError(x: number): number;
export declare function gamma(x: number): number;
export declare function reciprocalGamma(x: number): number;
export declare function lnGamma(x: number): number;
export declare const sinPi: (x: number) => number;
export declare function deviance(x: number, m: number): number;
export declare function regularisedGammaP(a: number, x: number): number;
export declare function regularisedGammaQ(a: number, x: number): number;
