import { type In, Quantity } from '../units/index.js';
export interface RelaxationSeries {
    readonly longTermModulus: In<'modulus'>;
    readonly terms: readonly {
        readonly modulus: In<'modulus'>;
        readonly time: In<'time'>;
    }[];
}
export interface ComplianceSeries {
    readonly instantCompliance: In<'creepCompliance'>;
    readonly terms: readonly {
        readonly compliance: In<'creepCompliance'>;
        readonly time: In<'time'>;
    }[];
    readonly viscosity?: In<'dynamicViscosity'> | undefined;
}
export interface RelaxationSi {
    readonly longTermModulus: number;
    readonly terms: readonly {
        readonly modulus: number;
        readonly time: number;
    }[];
}
export interface ComplianceSi {
    readonly instantCompliance: number;
    readonly terms: readonly {
        readonly compliance: number;
        readonly time: number;
    }[];
    readonly viscosity?: number | undefined;
}
export declare function complianceFromRelaxationSi(series: RelaxationSi): ComplianceSi;
export declare function relaxationFromComplianceSi(series: ComplianceSi): RelaxationSi;
export interface Relaxation {
    readonly longTermModulus: Quantity<'modulus'>;
    readonly terms: readonly {
        readonly modulus: Quantity<'modulus'>;
        readonly time: Quantity<'time'>;
    }[];
}
export interface Compliance {
    readonly instantCompliance: Quantity<'creepCompliance'>;
    readonly terms: readonly {
        readonly compliance: Quantity<'creepCompliance'>;
        readonly time: Quantity<'time'>;
    }[];
    readonly viscosity?: Quantity<'dynamicViscosity'>;
}
export declare const readRelaxation: (where: string, series: RelaxationSeries) => RelaxationSi;
export declare const readCompliance: (where: string, series: ComplianceSeries) => ComplianceSi;
export declare function complianceFromRelaxation(series: RelaxationSeries): Compliance;
export declare function relaxationFromCompliance(series: ComplianceSeries): Relaxation;
