import { type In, Quantity } from '../units/index.js';
import { type Network } from './network.js';
export interface Phase {
    readonly network: Network;
    readonly duration: In<'time'>;
}
export interface DutyResult {
    readonly state: 'settled' | 'finished' | 'runaway';
    readonly peaks: Readonly<Record<string, {
        readonly temperature: Quantity<'temperature'>;
        readonly time: Quantity<'time'>;
    }>>;
    readonly means: Readonly<Record<string, Quantity<'temperature'>>>;
    readonly lows: Readonly<Record<string, Quantity<'temperature'>>>;
    readonly end: Readonly<Record<string, Quantity<'temperature'>>>;
    readonly times: Float64Array;
    readonly temperatures: Readonly<Record<string, Float64Array>>;
    readonly period: Quantity<'time'>;
}
export declare function onePass(phases: readonly Phase[], initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>): DutyResult;
export declare function settledCycle(phases: readonly Phase[]): DutyResult;
export declare function shortTimeDuty(duty: {
    readonly load: Network;
    readonly rest: Network;
    readonly loadTime: In<'time'>;
    readonly restTime?: In<'time'>;
    readonly initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>;
}): DutyResult;
export declare function intermittentDuty(duty: {
    readonly load: Network;
    readonly rest: Network;
    readonly dutyFactor: In<'ratio'>;
    readonly period?: In<'time'>;
}): DutyResult;
export interface TimeToLimit {
    readonly time: Quantity<'time'>;
    readonly node: string | undefined;
}
export declare function timeToLimit(network: Network, limits: Readonly<Record<string, In<'temperature'>>>, initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>): TimeToLimit;
