import { type Formula, type Given, type Inputs, type Output } from '../formula/index.js';
import { type In, type Kind } from '../units/index.js';
import { Optimum } from './optimum.js';
import { type KindAt, type ScalarOutput, type ScalarPath } from './path.js';
import type { Fixed } from './sweep.js';
export interface VaryRange<K extends Kind> {
    readonly from: In<K>;
    readonly to: In<K>;
}
export type Choice<I> = {
    readonly [option: string]: DeepPartial<Given<I>>;
};
type DeepPartial<T> = T extends {
    readonly kind?: unknown;
} | string | number | boolean | readonly unknown[] | ((...args: never) => unknown) ? T : {
    readonly [N in keyof T]?: DeepPartial<T[N]>;
};
type OutputName<O> = O extends Kind | {
    kind: Kind;
    infinite: true;
} ? 'result' : ScalarOutput<O>;
type KindOf<O, N> = O extends Kind ? O : O extends {
    kind: infer K extends Kind;
    infinite: true;
} ? K : N extends keyof O ? O[N] extends Kind ? O[N] : O[N] extends {
    kind: infer K extends Kind;
} ? K : never : never;
export type Goal<O> = {
    readonly minimise: OutputName<O>;
} | {
    readonly maximise: OutputName<O>;
};
export type Constraints<O> = {
    readonly [N in OutputName<O>]?: {
        readonly min?: In<KindOf<O, N>>;
        readonly max?: In<KindOf<O, N>>;
    };
};
export interface OptimisePlan<I, O> {
    readonly vary?: {
        readonly [P in ScalarPath<I>]?: VaryRange<KindAt<I, P>>;
    };
    readonly choices?: {
        readonly [name: string]: Choice<I>;
    };
    readonly goals: Goal<O> | readonly Goal<O>[];
    readonly constraints?: Constraints<O>;
    readonly fixed?: Fixed<I>;
    readonly evaluations?: number;
    readonly population?: number;
    readonly seed?: number;
    readonly onProgress?: (done: number, of: number) => void;
}
export declare function optimise<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<OptimisePlan<I, O>>): Optimum;
export {};
