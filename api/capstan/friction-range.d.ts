import { type Flat, type Formula, type Given, type Inputs, type Output, type Result } from '../formula/index.js';
import { type In } from '../units/index.js';
import type { AtFriction } from './drive-results.js';
export declare function overFriction<I extends Inputs & {
    readonly friction: unknown;
}, O extends Output>(formula: Formula<I, O>, given: Flat<Omit<Given<I>, 'friction'>> & {
    readonly friction: {
        readonly low: In<'ratio'>;
        readonly high: In<'ratio'>;
    };
}): AtFriction<Result<O>>;
