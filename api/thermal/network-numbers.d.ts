import { type In, type Issue, type Kind } from '../units/index.js';
export type Loss = In<'power'> | ((temperature: number) => number) | {
    readonly on: readonly string[];
    readonly watts: (...temperatures: number[]) => number;
};
export interface NetworkNode {
    readonly capacity?: In<'heatCapacity'> | undefined;
    readonly loss?: Loss | undefined;
    readonly lossScatter?: In<'ratio'> | undefined;
    readonly fixed?: In<'temperature'> | undefined;
}
export interface NetworkLink {
    readonly from: string;
    readonly to: string;
    readonly conductance?: In<'thermalConductance'> | ((from: number, to: number) => number) | undefined;
    readonly resistance?: In<'thermalResistance'> | undefined;
    readonly scatter?: In<'ratio'> | undefined;
    readonly name?: string | undefined;
}
export interface LinkNumbers {
    readonly name: string;
    readonly a: number;
    readonly b: number;
    readonly g: number | ((from: number, to: number) => number);
    readonly factor: number;
    readonly scatter: number;
}
export interface LossNumbers {
    readonly node: number;
    readonly on: readonly number[];
    readonly watts: number | ((...temperatures: number[]) => number);
    readonly scatter: number;
}
export interface NetworkNumbers {
    readonly names: readonly string[];
    readonly fixedNames: readonly string[];
    readonly fixed: Float64Array;
    readonly capacities: Float64Array;
    readonly links: readonly LinkNumbers[];
    readonly losses: readonly LossNumbers[];
    readonly ceiling: number;
}
export declare function siOf(path: string, kind: Kind, given: unknown, issues: Issue[], above?: number): number;
export declare function unknownNode(path: string, name: string, names: readonly string[]): Issue;
export declare function readLosses(given: Readonly<Record<string, {
    readonly loss?: Loss | undefined;
    readonly lossScatter?: In<'ratio'> | undefined;
}>>, free: readonly string[], all: readonly string[], issues: Issue[]): LossNumbers[];
export declare const HOTTEST = 3000;
export declare function readNetwork(nodes: Readonly<Record<string, NetworkNode>>, links: readonly NetworkLink[], ceilingGiven?: In<'temperature'>): NetworkNumbers;
export declare function lossAt({ on, watts }: LossNumbers, T: Float64Array): number;
export declare function flowOf({ a, b, g, factor }: LinkNumbers, T: Float64Array): number;
export declare function imbalance(n: NetworkNumbers, T: Float64Array, out: Float64Array): number;
export declare function slopes(n: NetworkNumbers, T: Float64Array, out: Float64Array): void;
export declare function temperaturesAt(n: NetworkNumbers, temperature: number): Float64Array;
