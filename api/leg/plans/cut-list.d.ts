import type { Quantity } from '../../units/index.js';
import { type Joint } from '../numbers.js';
export interface CordCut {
    readonly joint: Joint;
    readonly cord: string;
    readonly cutLength: Quantity<'length'>;
    readonly workingLength: Quantity<'length'>;
    readonly betweenEnds: Quantity<'length'>;
    readonly tail: Quantity<'length'>;
    readonly endLength: Quantity<'length'>;
    readonly ends: string;
    readonly clampAt: Quantity<'length'> | undefined;
}
export interface PinCut {
    readonly joint: Joint;
    readonly size: string;
    readonly length: Quantity<'length'>;
}
export interface ShaftCut {
    readonly thread: string;
    readonly propertyClass: string;
    readonly leastLength: Quantity<'length'>;
    readonly innerThread: string;
    readonly tapDrill: Quantity<'length'>;
    readonly threadDepth: Quantity<'length'>;
    readonly drillDepth: Quantity<'length'>;
}
export interface BoltCut {
    readonly group: 'stack' | 'motor';
    readonly thread: string;
    readonly propertyClass: string;
    readonly count: number;
    readonly leastLength: Quantity<'length'>;
}
export interface CutList {
    readonly cords: readonly CordCut[];
    readonly pins: readonly PinCut[];
    readonly shaft: ShaftCut;
    readonly bolts: readonly BoltCut[];
}
export declare const END_DIAMETERS: {
    readonly splice: 72;
    readonly swagedSleeve: 12;
    readonly knot: 30;
};
