import type { Source } from '../formula/index.js';
import { Quantity } from '../units/index.js';
declare const KINDS_OF_THREAD: {
    readonly diameter: "length";
    readonly pitch: "length";
    readonly pitchDiameter: "length";
    readonly minorDiameter: "length";
    readonly rootDiameter: "length";
    readonly stressArea: "area";
    readonly rootArea: "area";
    readonly leadAngle: "angle";
    readonly allowance: "length";
    readonly screwMajorTolerance: "length";
    readonly screwPitchTolerance: "length";
    readonly nutPitchTolerance: "length";
    readonly nutMinorTolerance: "length";
};
type ThreadField = keyof typeof KINDS_OF_THREAD;
export type ThreadSizes = {
    readonly [F in ThreadField]: Quantity<(typeof KINDS_OF_THREAD)[F]>;
};
export type SiThreadSizes = {
    readonly [F in ThreadField]: number;
};
export type CoarseThread = 'M1.6' | 'M2' | 'M2.5' | 'M3' | 'M4' | 'M5' | 'M6' | 'M8' | 'M10' | 'M12';
export declare const metricThread: {
    (designation: CoarseThread | (string & {})): ThreadSizes;
    readonly si: (designation: CoarseThread | (string & {})) => SiThreadSizes;
    readonly designations: readonly CoarseThread[];
    readonly source: readonly Source[];
};
export {};
