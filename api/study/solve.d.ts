import { type Formula, type Inputs, type Output } from '../formula/index.js';
import { type In, type Kind, Quantity } from '../units/index.js';
import { type KindAt, type ScalarPath, type Target, type Without } from './path.js';
export interface SolveOptions<K extends Kind> {
    readonly between?: readonly [In<K>, In<K>];
    readonly samples?: number;
}
export interface Solution<K extends Kind> {
    readonly state: 'solved' | 'several' | 'none';
    readonly roots: readonly Quantity<K>[];
    readonly value: Quantity<K>;
    readonly message: string;
}
export declare function solveFor<I extends Inputs, O extends Output, const P extends ScalarPath<I>>(formula: Formula<I, O>, path: P, given: NoInfer<Without<I, P>>, wanted: NoInfer<Target<O>>, options?: NoInfer<SolveOptions<KindAt<I, P>>>): Solution<KindAt<I, P>>;
