import { type AnyFormula, type Formula, type Inputs, type Output } from '../formula/index.js';
import { type In } from '../units/index.js';
import { type Design, type Plan, type Range } from './design.js';
import { type KindAt, type ScalarPath } from './path.js';
import { type Column, Table } from './table.js';
export type Over<I> = {
    readonly [P in ScalarPath<I>]?: readonly In<KindAt<I, P>>[] | Range<KindAt<I, P>>;
};
export type Fixed<I> = {
    readonly [N in keyof I]?: unknown;
};
export interface SweepPlan<I> {
    readonly over: Over<I>;
    readonly fixed?: Fixed<I>;
    readonly design?: Design;
}
export interface Runner {
    readonly id: string;
    readonly plan: Plan;
    readonly described: string;
    run(from: number, to: number, columns: readonly Column[]): void;
    columns(rows: number): Column[];
}
export declare function sweep<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<SweepPlan<I>>): Table;
export declare function runnerOf(formula: AnyFormula, { over, fixed, design }: SweepPlan<Inputs>): Runner;
