export type LinkSi = ArrayLike<number>;
export declare class LegDynamicsKernel {
    private readonly d;
    private readonly l1;
    private readonly l2;
    private readonly hip;
    private readonly upper;
    private readonly lower;
    private readonly rotor;
    private readonly lift;
    constructor(hipOffset: number, upperLink: number, lowerLink: number, links: readonly [hip: LinkSi, upper: LinkSi, lower: LinkSi], gravity: ArrayLike<number>, rotorInertia?: ArrayLike<number>);
    torqueInto(out: Float64Array, offset: number, q: Float64Array, w: Float64Array, a: Float64Array, rx: number, ry: number, rz: number): void;
}
