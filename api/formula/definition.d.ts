import type { In, Kind, Quantity } from '../units/index.js';
import type { Source } from './provenance.js';
export type Limit<K extends Kind> = number | In<K>;
export type Scalar = {
    [K in Kind]: {
        readonly kind: K;
        readonly min?: Limit<K>;
        readonly max?: Limit<K>;
        readonly above?: Limit<K>;
        readonly below?: Limit<K>;
        readonly whole?: true;
        readonly optional?: true;
        readonly default?: In<K>;
    };
}[Kind];
export type Input = Kind | Scalar | {
    readonly oneOf: readonly string[];
    readonly optional?: true;
    readonly default?: string;
} | {
    readonly list: Input;
    readonly least?: number;
    readonly optional?: true;
} | {
    readonly fields: Inputs;
    readonly optional?: true;
} | {
    readonly curve: readonly [Kind, Kind];
    readonly optional?: true;
} | {
    readonly flag: true;
    readonly optional?: true;
    readonly default?: boolean;
};
export interface Inputs {
    readonly [name: string]: Input;
}
export type OutputField = Kind | {
    readonly kind: Kind;
    readonly infinite: true;
} | {
    readonly list: Kind;
} | {
    readonly oneOf: readonly string[];
};
export type Output = Kind | {
    readonly kind: Kind;
    readonly infinite: true;
} | OutputRecord;
export interface OutputRecord {
    readonly [name: string]: OutputField;
}
export interface Definition<I extends Inputs, O extends Output, Y> {
    readonly inputs: I;
    readonly output: O;
    readonly assumes?: readonly string[];
    readonly source: readonly Source[];
    readonly requires?: {
        readonly [path: string]: {
            readonly accepts: string;
            readonly holds: (x: Si<I>) => boolean;
        };
    };
    readonly valid?: {
        readonly [statement: string]: (x: Si<I>, y: SiResult<O>) => boolean;
    };
    readonly si: (x: Si<I>) => Y;
}
export type Curve<X extends Kind, Y extends Kind> = ((x: Quantity<X>) => In<Y>) & {
    readonly si?: (x: number) => number;
};
export type Arg<S> = S extends Kind ? In<S> : S extends {
    kind: infer K extends Kind;
} ? In<K> : S extends {
    oneOf: readonly (infer T)[];
} ? T : S extends {
    list: infer E;
} ? readonly Arg<E>[] : S extends {
    fields: infer F;
} ? Given<F> : S extends {
    curve: readonly [infer X extends Kind, infer Y extends Kind];
} ? Curve<X, Y> : S extends {
    flag: true;
} ? boolean : never;
type SiArg<S> = S extends Kind | {
    kind: Kind;
} ? number : S extends {
    oneOf: readonly (infer T)[];
} ? T : S extends {
    list: infer E;
} ? readonly SiArg<E>[] : S extends {
    fields: infer F;
} ? Si<F> : S extends {
    curve: unknown;
} ? (x: number) => number : S extends {
    flag: true;
} ? boolean : never;
type Skip = {
    optional: true;
} | {
    default: unknown;
};
export type Given<I> = [
    {
        [K in keyof I as I[K] extends Skip ? never : K]: Arg<I[K]>;
    } & {
        [K in keyof I as I[K] extends Skip ? K : never]?: Arg<I[K]> | undefined;
    }
][0] extends infer G ? {
    [K in keyof G]: G[K];
} : never;
export type Si<I> = {
    readonly [K in keyof I]: I[K] extends {
        optional: true;
    } ? SiArg<I[K]> | undefined : SiArg<I[K]>;
};
type Value<O> = O extends Kind ? Quantity<O> : O extends {
    kind: infer K extends Kind;
} ? Quantity<K> : O extends {
    list: infer K extends Kind;
} ? Quantity<K>[] : O extends {
    oneOf: readonly (infer T)[];
} ? T : never;
type SiValue<O> = O extends Kind | {
    kind: Kind;
} ? number : O extends {
    list: Kind;
} ? readonly number[] : O extends {
    oneOf: readonly (infer T)[];
} ? T : never;
export type Result<O> = O extends Kind | {
    kind: Kind;
    infinite: true;
} ? Value<O> : {
    readonly [K in keyof O]: Value<O[K]>;
};
export type SiResult<O> = O extends Kind | {
    kind: Kind;
    infinite: true;
} ? number : {
    readonly [K in keyof O]: SiValue<O[K]>;
};
export type Flat<T> = T extends infer G ? {
    [K in keyof G]: G[K];
} : never;
export {};
