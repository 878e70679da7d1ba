export declare function multiply3(out: Float64Array, a: ArrayLike<number>, b: ArrayLike<number>): void;
export declare function transpose3(out: Float64Array, a: ArrayLike<number>): void;
export declare const determinant3: (a: ArrayLike<number>) => number;
export declare function invert3(out: Float64Array, a: ArrayLike<number>): boolean;
export declare function quadratic3(a: ArrayLike<number>, u: ArrayLike<number>): number;
export declare function apply3(a: ArrayLike<number>, u: ArrayLike<number>): [number, number, number];
export declare function unit3(u: ArrayLike<number>): [number, number, number] | undefined;
