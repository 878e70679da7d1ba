import { Property } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
import type { Material } from './record.js';
export interface ServiceVerdict {
    readonly verdict: 'ok' | 'marginal' | 'fail' | 'unknown';
    readonly reason: string;
    readonly limit?: Property<'temperature'>;
    readonly limitedBy?: ServiceLimit['name'];
    readonly limits: readonly ServiceLimit[];
}
export interface ServiceLimit {
    readonly name: 'creep near the glass transition' | 'glass transition' | 'service temperature' | 'melting' | 'last known strength';
    readonly at: Property<'temperature'>;
}
export declare function serviceVerdict(material: Material, temperature: In<'temperature'>, load?: 'loaded' | 'unloaded'): ServiceVerdict;
export declare function serviceMargin(material: Material, temperature: In<'temperature'>, load?: 'loaded' | 'unloaded'): Quantity<'temperatureDifference'>;
