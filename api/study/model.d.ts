import { type AnyFormula, type Arg, type Inputs, type Scalar } from '../formula/index.js';
import { type In, type Issue, type Kind } from '../units/index.js';
import { type DistributionOf, type Scatter } from './distribution.js';
import { type ScalarOutput } from './path.js';
export type UncertainArg<S> = S extends Kind ? In<S> | DistributionOf<S> : S extends {
    kind: infer K extends Kind;
} ? In<K> | DistributionOf<K> : S extends {
    fields: infer F;
} ? Uncertain<F> : Arg<S>;
type Skip = {
    optional: true;
} | {
    default: unknown;
};
export type Uncertain<I> = [
    {
        readonly [N in keyof I as I[N] extends Skip ? never : N]: UncertainArg<I[N]>;
    } & {
        readonly [N in keyof I as I[N] extends Skip ? N : never]?: UncertainArg<I[N]> | undefined;
    }
][0] extends infer G ? {
    [N in keyof G]: G[N];
} : never;
export type OptionsFor<O, T> = O extends Kind | {
    kind: Kind;
    infinite: true;
} ? [options?: T & {
    readonly output?: never;
}] : [options: T & {
    readonly output: ScalarOutput<O>;
}];
export interface Varied {
    readonly path: string;
    readonly kind: Kind;
    readonly nominal: number;
    readonly scatter: Scatter;
    readonly fromProperty: boolean;
}
export interface Model {
    readonly id: string;
    readonly output: {
        readonly name: string;
        readonly kind: Kind;
    };
    readonly at: (values: ArrayLike<number>) => number;
    readonly x: Record<string, unknown>;
}
export declare function outputOf(formula: AnyFormula, name: unknown, issues: Issue[], path?: string): {
    name: string;
    kind: Kind;
};
export declare function modelOf(formula: AnyFormula, given: unknown, paths: readonly string[], output: {
    name: string;
    kind: Kind;
}, issues: Issue[]): Model;
export declare function limitsOf({ kind, min, max, above, below }: Scalar): {
    readonly low: number;
    readonly high: number;
};
export interface UncertainModel {
    readonly varied: readonly Varied[];
    readonly model: Model;
    readonly nominal: Record<string, unknown>;
    readonly remarks: readonly string[];
}
export declare function uncertainModel(formula: AnyFormula, given: unknown, outputName: unknown, issues?: Issue[]): UncertainModel;
export declare function scalarsGiven(inputs: Inputs, given: unknown, prefix?: string): {
    path: string;
    scalar: Scalar;
    value: unknown;
}[];
export declare const limitsAt: (formula: AnyFormula, paths: readonly string[]) => {
    readonly low: number;
    readonly high: number;
}[];
export declare function slope(f: (x: number) => number, x: number, step: number, limits: {
    readonly low: number;
    readonly high: number;
}): number;
export {};
