export interface ResidualCheck {
    readonly check: 'outliers' | 'runs' | 'serial correlation' | 'normality' | 'size';
    readonly holds: boolean;
    readonly chance: number | undefined;
    readonly readings: readonly number[];
    readonly message: string;
}
export declare function residualChecks(residuals: Float64Array, sigma: number, freedom: number, known: boolean): ResidualCheck[];
