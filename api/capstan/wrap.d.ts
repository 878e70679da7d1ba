export interface EndProbe {
    integral: number;
    slope: number;
    boundary: number;
    boundaryIntegral: number;
    boundaryLog: number;
    sense: number;
    through: boolean;
}
export declare const endProbe: () => EndProbe;
export declare class Wrap {
    private readonly friction;
    private theta;
    private log;
    private sum;
    private head;
    private tail;
    constructor(low: number, high: number, tension: number, friction: number);
    get low(): number;
    get high(): number;
    get lowIntegral(): number;
    get highIntegral(): number;
    get lowTension(): number;
    corners(): [number, number][];
    integralTo(angle: number): number;
    private within;
    probe(outward: 1 | -1, angle: number, T: number, out: EndProbe): void;
    commit(outward: 1 | -1, angle: number, T: number, probe: EndProbe): void;
    private push;
    private recentre;
    flatten(lowTension: number, highTension: number): void;
}
