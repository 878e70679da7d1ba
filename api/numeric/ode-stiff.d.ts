import { type OdeProblem, type OdeSolution } from './ode.js';
export interface StiffProblem extends OdeProblem {
    readonly jacobian?: ((t: number, y: Float64Array, out: Float64Array) => void) | undefined;
}
export declare function solveStiff(problem: StiffProblem): OdeSolution;
