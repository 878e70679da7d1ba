import { type OdeProblem, type OdeSolution } from './ode.js';
export declare function solveNonStiff(problem: OdeProblem): OdeSolution;
