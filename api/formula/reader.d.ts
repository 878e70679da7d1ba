import { type Issue } from '../units/index.js';
import type { Given, Input, Inputs, Si } from './definition.js';
type Reader = (given: unknown, path: string, issues: Issue[]) => unknown;
export declare function reader(input: Input): Reader;
export declare function recordReader(inputs: Inputs, refuseSurplus: boolean): Reader;
export declare function readInputs<const I extends Inputs>(where: string, inputs: I, given: Given<I>): Si<I>;
export {};
