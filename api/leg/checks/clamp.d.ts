import type { Evaluator } from '../../formula/index.js';
import type { Scene } from '../state.js';
import { type BoltGroup, type TightBolt } from './bolt-group.js';
export declare function clampLeft(of: Evaluator, { leg }: Scene, group: BoltGroup, bolt: TightBolt, temperature: number): number;
