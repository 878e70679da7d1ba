import { type AnyFormula } from '../formula/index.js';
import { type In, type Kind } from '../units/index.js';
export interface Range<K extends Kind> {
    readonly from: In<K>;
    readonly to: In<K>;
    readonly count?: number;
    readonly spacing?: 'linear' | 'log';
}
export type Design = 'grid' | 'list' | {
    readonly latinHypercube: number;
    readonly seed: number;
} | {
    readonly sobol: number;
    readonly seed?: number;
};
export interface Plan {
    readonly paths: readonly string[];
    readonly kinds: readonly Kind[];
    readonly rows: number;
    fill(row: number, into: Float64Array): void;
    fillColumns(from: number, to: number, into: readonly Float64Array[]): void;
}
export declare function planOf(formula: AnyFormula, over: Readonly<Record<string, unknown>>, design: Design): Plan;
