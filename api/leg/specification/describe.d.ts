import { type LegData, type LegSpecification } from './schema.js';
import { type LegDefault } from './walk.js';
export type Leg = LegData & {
    readonly defaults: readonly LegDefault[];
};
export declare function describeLeg(specification: LegSpecification | string | Leg): Leg;
