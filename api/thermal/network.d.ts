import { Property } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
import { type Loss, type NetworkLink, type NetworkNode, type NetworkNumbers } from './network-numbers.js';
import { type SteadyNumbers } from './network-steady.js';
export type { Loss, NetworkLink, NetworkNode } from './network-numbers.js';
export type Temperatures = Readonly<Record<string, Property<'temperature'>>>;
export interface SteadyTemperatures {
    readonly state: 'steady' | 'runaway';
    readonly temperatures: Temperatures;
    readonly flows: readonly Quantity<'power'>[];
    readonly residual: Quantity<'power'>;
}
export interface Course {
    readonly state: 'finished' | 'runaway';
    at(time: In<'time'>): Readonly<Record<string, Quantity<'temperature'>>>;
    readonly times: Float64Array;
    readonly temperatures: Readonly<Record<string, Float64Array>>;
    readonly peaks: Readonly<Record<string, {
        readonly temperature: Quantity<'temperature'>;
        readonly time: Quantity<'time'>;
    }>>;
    readonly ledger: {
        readonly released: Quantity<'energy'>;
        readonly given: Quantity<'energy'>;
        readonly stored: Quantity<'energy'>;
    };
    readonly passed: Readonly<Record<string, Quantity<'time'>>>;
}
export interface Network {
    readonly nodes: readonly string[];
    readonly links: readonly string[];
    steady(): SteadyTemperatures;
    transient(course: {
        readonly duration: In<'time'>;
        readonly initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>;
        readonly limits?: Readonly<Record<string, In<'temperature'>>>;
    }): Course;
    withLosses(losses: Readonly<Record<string, Loss>>): Network;
    scaled(factors: {
        readonly links?: Readonly<Record<string, number>>;
        readonly capacities?: Readonly<Record<string, number>>;
    }): Network;
    readonly si: {
        readonly numbers: NetworkNumbers;
        steady(start?: Float64Array): SteadyNumbers;
    };
}
export declare function network(nodes: Readonly<Record<string, NetworkNode>>, links: readonly NetworkLink[], options?: {
    readonly ceiling?: In<'temperature'>;
}): Network;
