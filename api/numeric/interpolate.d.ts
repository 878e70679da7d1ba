export interface Table {
    (x: number): number;
    slope(x: number): number;
    readonly low: number;
    readonly high: number;
}
export declare function linearTable(xs: ArrayLike<number>, ys: ArrayLike<number>): Table;
export declare function monotoneTable(xs: ArrayLike<number>, ys: ArrayLike<number>): Table;
export declare function bilinearTable(xs: ArrayLike<number>, ys: ArrayLike<number>, z: ArrayLike<ArrayLike<number>>): (x: number, y: number) => number;
