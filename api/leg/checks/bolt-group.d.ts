import { metricThread } from '../../fasteners/index.js';
import { type Evaluator } from '../../formula/index.js';
import type { Matter } from '../matter.js';
import type { Scene } from '../state.js';
export type BoltGroup = 'stack' | 'motor';
export interface TightBolt {
    readonly thread: ReturnType<typeof metricThread.si>;
    readonly preload: number;
    readonly holeDiameter: number;
    readonly bearingDiameter: number;
    readonly layers: readonly Matter[];
    readonly grip: number;
    readonly boltCompliance: number;
    readonly memberCompliance: number;
    readonly loadFactor: number;
}
export declare function tightBolt(of: Evaluator, { leg }: Scene, group: BoltGroup): TightBolt;
export declare const softest: (layers: readonly Matter[]) => Matter;
