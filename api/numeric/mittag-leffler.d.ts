export declare function mittagLeffler(alpha: number, beta: number, z: number): number;
