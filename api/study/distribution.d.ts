import { type In, type Issue, type Kind } from '../units/index.js';
export type SpreadOf<K extends Kind> = K extends 'temperature' ? 'temperatureDifference' : K;
export interface Distribution<V = unknown, S = unknown> {
    readonly distribution: 'normal' | 'lognormal' | 'uniform' | 'triangular' | 'truncated';
    readonly at: readonly V[];
    readonly spread?: S;
    readonly factor?: number;
    readonly of?: Distribution<V, S>;
}
export type DistributionOf<K extends Kind> = Distribution<In<K>, In<SpreadOf<K>>>;
export declare const normal: <const V, const S>(mean: V, standardDeviation: S) => Distribution<V, S>;
export declare const lognormal: <const V>(median: V, factor: number) => Distribution<V, never>;
export declare const uniform: <const V>(low: V, high: V) => Distribution<V, never>;
export declare const triangular: <const V>(low: V, mode: V, high: V) => Distribution<V, never>;
export declare const truncated: <const V, const S>(of: Distribution<V, S>, low: V, high: V) => Distribution<V, S>;
export declare const isDistribution: (given: unknown) => given is Distribution;
export interface Scatter {
    readonly mean: number;
    readonly deviation: number;
    readonly median: number;
    readonly low: number;
    readonly high: number;
    quantile(fraction: number): number;
    below(x: number): number;
    readonly words: string;
}
export declare function scatterOf(given: Distribution, kind: Kind, path: string, issues: Issue[]): Scatter | undefined;
export declare const triangularScatter: (low: number, mode: number, high: number, kind: Kind) => Scatter;
export declare function truncatedScatter(inner: Scatter, low: number, high: number, kind: Kind): Scatter;
