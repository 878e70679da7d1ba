import { Quantity } from '../../units/index.js';
import { type Joint, type Prepared } from '../numbers.js';
import type { Leg } from '../specification/describe.js';
export interface Assumed {
    readonly what: string;
    readonly value: string;
    readonly why: string;
}
export interface BenchDrive {
    readonly joint: Joint;
    readonly pinionRadius: number;
    readonly drumRadius: number;
    readonly ratio: number;
    readonly pinionWrapAngle: number;
    readonly drumWrap: number;
    readonly span: number;
    readonly middle: number;
    readonly travel: number;
}
export declare const benchLeg: (leg: Leg) => Prepared;
export declare function benchDrive(leg: Prepared, joint: Joint): BenchDrive;
export declare const length: (x: number) => Quantity<"length">;
export declare const force: (x: number) => Quantity<"force">;
export declare const torque: (x: number) => Quantity<"torque">;
export declare const angle: (x: number) => Quantity<"angle">;
export declare const ratio: (x: number) => Quantity<"ratio">;
export declare const count: (x: number) => Quantity<"count">;
