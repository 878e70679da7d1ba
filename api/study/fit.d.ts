import { type Formula, type Inputs, type Output } from '../formula/index.js';
import { type In, type Kind, Quantity, type UnitOf } from '../units/index.js';
import { FitResult } from './fit-result.js';
import { type KindAt, type ScalarOutput, type ScalarPath } from './path.js';
import type { Fixed } from './sweep.js';
export type Logged<K extends Kind> = readonly In<K>[] | {
    readonly unit: UnitOf<K>;
    readonly values: ArrayLike<number>;
};
export type Guess<K extends Kind> = In<K> | {
    readonly start: In<K>;
    readonly low?: In<K>;
    readonly high?: In<K>;
};
type OutputKind<O, N> = N extends keyof O ? (O[N] extends Kind ? O[N] : O[N] extends {
    kind: infer K extends Kind;
} ? K : never) : never;
export type Measured<O> = O extends Kind ? Logged<O> : O extends {
    kind: infer K extends Kind;
    infinite: true;
} ? Logged<K> : {
    readonly [N in ScalarOutput<O>]?: Logged<OutputKind<O, N>>;
};
export interface FitPlan<I, O> {
    readonly parameters: {
        readonly [P in ScalarPath<I>]?: Guess<KindAt<I, P>>;
    };
    readonly data: {
        readonly [P in ScalarPath<I>]?: Logged<KindAt<I, P>>;
    };
    readonly measured: Measured<O>;
    readonly fixed?: Fixed<I>;
    readonly deviation?: Quantity<Kind>;
    readonly confidence?: number;
}
export declare function fit<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<FitPlan<I, O>>): FitResult;
export {};
