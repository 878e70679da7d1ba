export type FrameSi = ArrayLike<number>;
export interface ChainJointSi {
    readonly sliding: boolean;
    readonly pitch?: number;
    readonly frame: FrameSi;
    readonly link: ArrayLike<number>;
}
export declare class ChainKernel {
    readonly joints: number;
    readonly sliding: Uint8Array;
    private readonly travel;
    private readonly fixed;
    private readonly links;
    private readonly tool;
    private readonly lift;
    private readonly rotor;
    private readonly rotorDiagonal;
    private readonly turn;
    private readonly place;
    private readonly frames;
    private readonly motion;
    private readonly loads;
    private readonly zero;
    private readonly unit;
    private readonly column;
    constructor(joints: readonly ChainJointSi[], tool: FrameSi, gravity: ArrayLike<number>, rotorInertia: ArrayLike<number>);
    poseInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    jacobianInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    spaceJacobianInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    bodyJacobianInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    centreOfMassInto(out: Float64Array, offset: number, q: ArrayLike<number>): number;
    potentialEnergy(q: ArrayLike<number>): number;
    torqueInto(out: Float64Array, offset: number, q: ArrayLike<number>, w: ArrayLike<number>, a: ArrayLike<number>, toolPush?: ArrayLike<number>): void;
    gravityInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    coriolisInto(out: Float64Array, offset: number, q: ArrayLike<number>, w: ArrayLike<number>): void;
    massMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void;
    kineticEnergy(q: ArrayLike<number>, w: ArrayLike<number>): number;
    private turnTo;
    private follow;
    private columnsInto;
    private inwardInto;
    private addLoad;
}
