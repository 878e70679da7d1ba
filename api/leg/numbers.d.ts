import type { Quantity } from '../units/index.js';
import { type Matter, type MoistureState } from './matter.js';
import type { Leg } from './specification/describe.js';
import type { LegData } from './specification/schema.js';
import { type BearingNumbers, type PinSize } from './specification/tables.js';
export type End = 'pessimistic' | 'typical' | 'optimistic';
export type SiOf<T> = T extends Quantity ? number : T extends string | number | boolean | undefined ? T : T extends readonly (infer E)[] ? SiOf<E>[] : {
    [K in keyof T]: SiOf<T[K]>;
};
export type LegNumbers = SiOf<LegData>;
export declare const legNumbers: (leg: Leg | LegData) => LegNumbers;
export declare const JOINTS: readonly ["hip", "knee"];
export type Joint = (typeof JOINTS)[number];
export interface DriveNumbers {
    readonly pinionRadius: number;
    readonly drumRadius: number;
    readonly ratio: number;
    readonly cord: LegNumbers['cords'][string];
    readonly friction: number;
    readonly pretensionLeft: number;
    readonly drum: Matter;
}
export interface Prepared {
    readonly x: LegNumbers;
    readonly end: End;
    readonly moisture: MoistureState;
    readonly matter: (name: string) => Matter;
    readonly drives: {
        readonly [J in Joint]: DriveNumbers;
    };
    readonly pins: {
        readonly [J in Joint]: PinSize;
    };
    readonly bosses: {
        readonly [J in Joint]: Matter;
    };
    readonly links: {
        readonly upper: Matter;
        readonly lower: Matter;
    };
    readonly plate: Matter;
    readonly sink: Matter | undefined;
    readonly foot: Matter;
    readonly cap: Matter;
    readonly seat: Matter;
    readonly bearing: BearingNumbers;
    readonly steel: Matter;
    readonly groundFriction: number;
}
export declare function prepare(x: LegNumbers, end?: End): Prepared;
