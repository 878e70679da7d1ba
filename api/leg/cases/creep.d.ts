import { type Evaluator } from '../../formula/index.js';
import type { Matter } from '../matter.js';
export declare function relaxedModulus(of: Evaluator, matter: Matter, temperature: number, duration: number): number;
