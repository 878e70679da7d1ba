export interface DriveState {
    readonly axialRigidity: number;
    readonly pretension: number;
    readonly pinionRadius: number;
    readonly drumRadius: number;
    readonly span: number;
    readonly pinionWrap: number;
    readonly drumWrapTaut: number;
    readonly drumWrapSlack: number;
    readonly friction: number;
    readonly drumFriction?: number | undefined;
    readonly hold: 'frictionOnly' | 'clampedMidPinion';
    readonly contactStiffness?: number | undefined;
}
export declare function branch(d: DriveState, T: number, drumWrap: number): {
    length: number;
    compliance: number;
};
export declare function increasingRoot(f: (x: number) => {
    value: number;
    slope: number;
}, start: number, low: number, high: number, tolerance: number): number;
