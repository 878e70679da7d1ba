import { type Chart } from '../chart/index.js';
import { type Formula, type Inputs, type Output } from '../formula/index.js';
import { type Kind, Quantity } from '../units/index.js';
import { type OptionsFor, type Uncertain } from './model.js';
import { type ScalarPath } from './path.js';
import { Printable } from './show.js';
export interface SensitivityOptions<P extends string = string> {
    readonly inputs?: readonly P[];
    readonly swing?: number;
}
export interface Sensitivity {
    readonly path: string;
    readonly value: Quantity<Kind>;
    readonly slope: number;
    readonly elasticity: number | undefined;
    readonly from: Quantity<Kind>;
    readonly to: Quantity<Kind>;
    readonly range: 'property' | 'distribution' | 'swing';
    readonly atFrom: Quantity<Kind> | undefined;
    readonly atTo: Quantity<Kind> | undefined;
}
export declare class Sensitivities extends Printable {
    readonly formula: string;
    readonly value: Quantity<Kind>;
    readonly inputs: readonly Sensitivity[];
    constructor(formula: string, value: Quantity<Kind>, inputs: readonly Sensitivity[]);
    get chart(): Chart;
    toMarkdown(): string;
}
export declare function sensitivity<I extends Inputs, O extends Output>(formula: Formula<I, O>, given: NoInfer<Uncertain<I>>, ...[options]: OptionsFor<O, SensitivityOptions<ScalarPath<I>>>): Sensitivities;
