import { type In, Quantity } from '../units/index.js';
import { type Network } from './network.js';
type At = Readonly<Record<string, In<'temperature'>>> | In<'temperature'>;
export declare function timeConstants(network: Network, at?: At): Quantity<'time'>[];
export declare function reduceNetwork(network: Network, keep: readonly string[], at?: At): Network;
export {};
