import { InputError, type Kind, type Note, Quantity } from '../units/index.js';
export interface Vector3<K extends Kind> {
    readonly x: Quantity<K>;
    readonly y: Quantity<K>;
    readonly z: Quantity<K>;
}
export interface PerJoint<T> {
    readonly abduction: T;
    readonly hip: T;
    readonly knee: T;
}
export declare const vectorOf: <K extends Kind>(kind: K, si: ArrayLike<number>, offset?: number, notes?: readonly Note[]) => Vector3<K>;
export declare const perJointOf: <K extends Kind>(kind: K, si: ArrayLike<number>, offset?: number) => PerJoint<Quantity<K>>;
export declare const rowsOf: <K extends Kind>(kind: K, si: ArrayLike<number>, columns: number) => Quantity<K>[][];
export declare const xyz: <const K extends Kind>(kind: K) => {
    x: K;
    y: K;
    z: K;
};
export declare const perJoint: <const K extends Kind>(kind: K) => {
    abduction: K;
    hip: K;
    knee: K;
};
export declare const noDirection: (where: string, path?: string) => InputError;
