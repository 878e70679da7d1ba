import type { ChainKernel } from './chain-kernel.js';
export interface InverseRequest {
    readonly position: ArrayLike<number>;
    readonly rotation?: ArrayLike<number> | undefined;
    readonly lengthPerRadian: number;
    readonly seed: ArrayLike<number>;
    readonly lowest: ArrayLike<number>;
    readonly highest: ArrayLike<number>;
    readonly tolerance: number;
    readonly maxIterations: number;
}
export interface InverseResult {
    readonly ended: 'reached' | 'settled' | 'iterationLimit';
    readonly values: Float64Array;
    readonly positionError: number;
    readonly rotationError: number;
    readonly iterations: number;
}
export declare function dampedInverse(chain: ChainKernel, request: InverseRequest): InverseResult;
