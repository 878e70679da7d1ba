import { type Chart } from '../chart/index.js';
import { type Kind, type Quantity } from '../units/index.js';
import { Printable } from './show.js';
export interface Point {
    readonly inputs: Readonly<Record<string, Quantity<Kind>>>;
    readonly choices: Readonly<Record<string, string>>;
    readonly results: Readonly<Record<string, Quantity<Kind>>>;
    readonly broken: readonly string[];
    readonly feasible: boolean;
    readonly argument: Readonly<Record<string, unknown>>;
}
export declare class Optimum extends Printable {
    readonly formula: string;
    readonly goals: readonly {
        readonly output: string;
        readonly goal: 'minimise' | 'maximise';
    }[];
    readonly best: Point;
    readonly front: readonly Point[];
    readonly runs: number;
    readonly seed: number;
    readonly atLimits: readonly string[];
    readonly agreement: {
        readonly searches: number;
        readonly agreeing: number;
    };
    constructor(formula: string, goals: readonly {
        readonly output: string;
        readonly goal: 'minimise' | 'maximise';
    }[], best: Point, front: readonly Point[], runs: number, seed: number, atLimits: readonly string[], agreement: {
        readonly searches: number;
        readonly agreeing: number;
    });
    get state(): 'found' | 'infeasible';
    get chart(): Chart;
    toMarkdown(most?: number): string;
}
