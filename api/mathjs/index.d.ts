import { type Unit } from 'mathjs';
import { type Kind, Quantity } from '../units/index.js';
export declare function fromMathjs<K extends Kind>(kind: K, given: string | Unit): Quantity<K>;
export declare function toMathjs(given: Quantity<Kind>): Unit;
