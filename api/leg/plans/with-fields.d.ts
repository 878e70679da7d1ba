import { type Leg } from '../specification/describe.js';
export type LegChanges = Readonly<Record<string, unknown>>;
export declare function withFields(leg: Leg, changes: LegChanges): Leg;
export declare const fieldAt: (leg: Leg, path: string) => unknown;
