export declare class BandedMatrix {
    readonly size: number;
    readonly band: number;
    private readonly rows;
    private readonly stride;
    constructor(size: number, band: number, rows?: Float64Array);
    copy(): BandedMatrix;
    addDiagonal(i: number, value: number): void;
    join(i: number, j: number, conductance: number): void;
    times(x: Float64Array): Float64Array;
    factor(): void;
    solve(right: Float64Array): Float64Array;
}
