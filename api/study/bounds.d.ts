import { type Chart } from '../chart/index.js';
import { type Formula, type Inputs, type Output } from '../formula/index.js';
import { type Kind, Quantity } from '../units/index.js';
import { type OptionsFor, type Uncertain } from './model.js';
import { Printable } from './show.js';
export interface BoundsOptions {
    readonly points?: number;
    readonly seed?: number;
}
export type Direction = 'rising' | 'falling' | 'both' | 'none';
export interface Extreme {
    readonly value: Quantity<Kind>;
    readonly at: Readonly<Record<string, Quantity<Kind>>>;
    readonly corner: boolean;
}
export declare class Bounds extends Printable {
    readonly formula: string;
    readonly low: Extreme;
    readonly high: Extreme;
    readonly inputs: readonly {
        readonly path: string;
        readonly low: Quantity<Kind>;
        readonly high: Quantity<Kind>;
        readonly direction: Direction;
    }[];
    readonly state: 'monotone' | 'searched';
    readonly runs: number;
    readonly gaps: number;
    constructor(formula: string, low: Extreme, high: Extreme, inputs: readonly {
        readonly path: string;
        readonly low: Quantity<Kind>;
        readonly high: Quantity<Kind>;
        readonly direction: Direction;
    }[], state: 'monotone' | 'searched', runs: number, gaps: number);
    get message(): string;
    get chart(): Chart;
    toMarkdown(): string;
}
export declare function bounds<I extends Inputs, O extends Output>(formula: Formula<I, O>, given: NoInfer<Uncertain<I>>, ...[options]: OptionsFor<O, BoundsOptions>): Bounds;
