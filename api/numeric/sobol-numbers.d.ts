export declare const SOBOL_NUMBERS: readonly (readonly number[])[];
