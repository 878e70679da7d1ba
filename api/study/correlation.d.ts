export interface CorrelationFactor {
    readonly matrix: Float64Array;
    readonly lower: Float64Array | undefined;
}
export declare function correlationFactor(paths: readonly string[], correlations: readonly {
    readonly between: readonly [string, string];
    readonly coefficient: number;
}[], where: string): CorrelationFactor;
