export declare function lnBeta(a: number, b: number): number;
export declare function regularisedBeta(x: number, a: number, b: number, complement?: number): number;
