export interface Candidate {
    readonly x: Float64Array;
    readonly goals: Float64Array;
    readonly violation: number;
}
export interface Problem {
    readonly low: Float64Array;
    readonly high: Float64Array;
    readonly choice: readonly boolean[];
    readonly goals: number;
    run(x: Float64Array): Candidate;
}
export interface Evolution {
    readonly population: number;
    readonly evaluations: number;
    readonly seed: number;
    readonly round?: number;
    readonly tolerance?: number;
    readonly progress?: ((done: number, of: number, best: Candidate) => void) | undefined;
}
export declare function dominates(a: Candidate, b: Candidate): boolean;
export declare function evolve(problem: Problem, { population, evaluations, seed, round, tolerance, progress }: Evolution): {
    crowd: Candidate[];
    used: number;
};
export interface Searched {
    readonly crowd: Candidate[];
    readonly used: number;
    readonly searches: number;
    readonly agreeing: number;
}
export declare function search(problem: Problem, evolution: Evolution): Searched;
export declare const bestOf: (crowd: readonly Candidate[]) => Candidate;
export declare function fronts(crowd: readonly Candidate[]): Candidate[][];
