import type { LegKernel } from './leg-kernel.js';
export declare const SINGULAR = 1e-8;
export declare function singularityOf(leg: LegKernel, q2: number, q3: number, tolerance?: number): 0 | 1 | 2 | 3;
export declare function footVelocityInto(leg: LegKernel, out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void;
export declare function jointRatesInto(leg: LegKernel, out: Float64Array, offset: number, q: ArrayLike<number>, v: ArrayLike<number>): void;
export declare function rateAccelerationInto(leg: LegKernel, out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void;
export declare function jointAccelerationsInto(leg: LegKernel, out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>, a: ArrayLike<number>): void;
export declare function footPushFromTorqueInto(leg: LegKernel, out: Float64Array, offset: number, q: ArrayLike<number>, torque: ArrayLike<number>): void;
