export declare function dimensionsText(dim: number): string;
export declare function hasSquareRoot(dim: number): boolean;
