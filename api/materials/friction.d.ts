import type { Property } from '../formula/index.js';
import { type Quantity } from '../units/index.js';
import { type Material } from './record.js';
export interface SlidingPair {
    readonly on: 'steel' | 'itself';
    readonly surface: 'dry' | 'greased';
}
export interface SlidingFriction {
    readonly friction: Property<'ratio'>;
    readonly forHolding: Quantity<'ratio'>;
    readonly forDriving: Quantity<'ratio'>;
}
export declare function slidingFriction(material: Material, pair: SlidingPair): SlidingFriction;
