import type { Evaluator, Source } from '../../formula/index.js';
import type { Kind } from '../../units/index.js';
import type { CaseId } from '../cases/catalogue.js';
import type { JointState, Scene } from '../state.js';
export interface Finding {
    readonly demand: number;
    readonly capacity: number;
    readonly remark?: string;
}
export type Stage = 'motion' | 'drive' | 'heat';
export type Stake = 'breaks' | 'fails to work' | 'safety';
export interface Check {
    readonly id: string;
    readonly part: string;
    readonly mode: string;
    readonly stake: Stake;
    readonly kind: Kind;
    readonly scope: 'joint' | 'leg';
    readonly cases: readonly CaseId[];
    readonly after: readonly Stage[];
    readonly run: (of: Evaluator, scene: Scene, at: JointState) => Finding | undefined;
    readonly demandIs: string;
    readonly capacityIs: string;
    readonly remedy: string;
    readonly enough?: number;
    readonly rests?: (scene: Scene) => readonly Rest[];
    readonly rule?: Source;
}
export interface Rest {
    readonly what: string;
    readonly source: Source;
    readonly test: string;
}
export declare const LOADED: readonly CaseId[];
export declare const WARM: readonly CaseId[];
export declare const ONCE: readonly CaseId[];
