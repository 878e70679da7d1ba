import type { FrameSi } from './chain-kernel.js';
export declare const IDENTITY: FrameSi;
export declare function compose(a: FrameSi, b: FrameSi): number[];
export declare function inverse(a: FrameSi): number[];
export declare const shift: (x: number, y: number, z: number) => number[];
export declare const turnX: (angle: number) => number[];
export declare const turnZ: (angle: number) => number[];
export declare function alignZ(x: number, y: number, z: number): number[];
export declare function linkIn(frame: FrameSi, link: ArrayLike<number>): number[];
