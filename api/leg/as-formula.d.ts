import { type Formula } from '../formula/index.js';
import { type Kind, Quantity } from '../units/index.js';
import { type CaseId } from './cases/catalogue.js';
import type { Leg } from './specification/describe.js';
import type { LegData } from './specification/schema.js';
export interface LegFormulaOptions {
    readonly cases?: readonly CaseId[];
    readonly check?: string;
}
type InputOf<T> = T extends Quantity<infer K extends Kind> ? {
    readonly kind: K;
    readonly optional: true;
} : {
    readonly fields: InputsOf<T>;
    readonly optional: true;
};
type InputsOf<T> = {
    readonly [N in keyof T & string as NonNullable<T[N]> extends Quantity ? N : NonNullable<T[N]> extends readonly unknown[] | string | number | boolean ? never : N]: InputOf<NonNullable<T[N]>>;
};
export type LegInputs = InputsOf<Omit<LegData, 'schemaVersion'>>;
export declare function legFormula(leg: Leg, options?: LegFormulaOptions): Formula<LegInputs, 'ratio'>;
export {};
