export interface RandomStream {
    uniform(): number;
    uniformBetween(low: number, high: number): number;
    integer(count: number): number;
    normal(mean: number, sd: number): number;
    lognormal(logMean: number, logSd: number): number;
    triangular(low: number, mode: number, high: number): number;
    truncatedNormal(mean: number, sd: number, low: number, high: number): number;
}
export declare function randomStream(seed: number, index?: number): RandomStream;
