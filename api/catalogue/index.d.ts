import type { AnyFormula } from '../formula/index.js';
export declare const catalogue: ReadonlyMap<string, AnyFormula>;
export declare function formulaOf(id: string): AnyFormula;
