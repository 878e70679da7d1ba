export declare const expMinusHalfSquare: (x: number) => number;
export declare const expMinusSquare: (x: number) => number;
export declare function erf(x: number): number;
export declare function erfc(x: number): number;
export declare function erfcScaled(x: number): number;
