import type { Matter } from '../matter.js';
import type { Rest } from './check.js';
export declare function polymerRest({ material }: Matter, part: string): Rest[];
export declare const frictionRest: Rest;
