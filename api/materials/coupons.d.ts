import { Property, type PropertyRecord } from '../formula/index.js';
import { type In } from '../units/index.js';
import { type KindOf, type Material, type MaterialHead, type PropertyName } from './record.js';
export declare const toleranceFactor: import("../formula/formula.js").Formula<{
    readonly sampleSize: {
        readonly kind: "count";
        readonly min: 2;
    };
    readonly coverage: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
        readonly default: 0.9;
    };
    readonly confidence: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
        readonly default: 0.95;
    };
}, "ratio">;
export interface CouponSetOf<P extends PropertyName> {
    readonly property: P;
    readonly values: readonly In<KindOf<P>>[];
    readonly conditions?: string;
    readonly measured?: string;
}
export type CouponSet = {
    [P in PropertyName]: CouponSetOf<P>;
}[PropertyName];
export interface WarmCoupons {
    readonly temperature: In<'temperature'>;
    readonly values: readonly In<'stress'>[];
}
export interface CouponMaterial {
    readonly name: string;
    readonly title?: string;
    readonly basedOn: Material;
    readonly coupons: readonly CouponSet[];
    readonly acrossLayers?: readonly In<'stress'>[];
    readonly warm?: readonly WarmCoupons[];
    readonly coverage?: number;
    readonly confidence?: number;
}
export declare function materialFromCoupons(given: CouponMaterial): Material;
export type OwnProperties = {
    readonly [P in PropertyName]?: Property<KindOf<P>> | PropertyRecord<KindOf<P>>;
};
export declare function withProperties(material: Material, properties: OwnProperties, head?: Partial<MaterialHead>): Material;
