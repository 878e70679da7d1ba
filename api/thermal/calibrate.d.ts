import { type In, Quantity } from '../units/index.js';
import { type Network } from './network.js';
type SteadyReading = Readonly<Record<string, In<'temperature'>>>;
export interface TemperatureLog {
    readonly times: readonly In<'time'>[];
    readonly temperatures: Readonly<Record<string, readonly In<'temperature'>[]>>;
    readonly initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>;
}
export interface Correction {
    readonly name: string;
    readonly of: 'conductance' | 'capacity';
    readonly factor: Quantity<'ratio'>;
    readonly low: Quantity<'ratio'>;
    readonly high: Quantity<'ratio'>;
    readonly before: Quantity<'ratio'>;
    readonly informed: boolean;
}
export interface Calibration {
    readonly network: Network;
    readonly corrections: readonly Correction[];
    readonly misfitBefore: Quantity<'temperatureDifference'>;
    readonly misfitAfter: Quantity<'temperatureDifference'>;
    readonly state: 'consistent' | 'strained';
    readonly factors: {
        readonly links: Readonly<Record<string, number>>;
        readonly capacities: Readonly<Record<string, number>>;
    };
}
export declare function calibrate(network: Network, measured: {
    readonly steady?: SteadyReading;
    readonly log?: TemperatureLog;
}, options?: {
    readonly sensor?: In<'temperatureDifference'>;
    readonly capacityScatter?: In<'ratio'>;
}): Calibration;
export interface StepResponse {
    readonly timeConstant: Quantity<'time'>;
    readonly final: Quantity<'temperature'>;
    readonly timeConstantBand: Quantity<'time'>;
    readonly finalBand: Quantity<'temperatureDifference'>;
    readonly resistance: Quantity<'thermalResistance'> | undefined;
    readonly capacity: Quantity<'heatCapacity'> | undefined;
}
export declare function fitStepResponse(curve: {
    readonly times: readonly In<'time'>[];
    readonly temperatures: readonly In<'temperature'>[];
    readonly power?: In<'power'>;
    readonly before?: In<'temperature'>;
}): StepResponse;
export {};
