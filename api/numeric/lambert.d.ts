export declare function lambertW0(x: number): number;
export declare function lambertWm1(x: number): number;
