import { type Source } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
import { type Material } from './record.js';
export interface Climate {
    readonly humidity: In<'ratio'>;
    readonly time: In<'time'>;
    readonly thickness: In<'length'>;
}
export interface DampWall {
    readonly water: Quantity<'ratio'>;
    readonly finalWater: Quantity<'ratio'>;
    readonly ninetyTime: Quantity<'time'>;
    readonly modulusShare: Quantity<'ratio'>;
    readonly strengthShare: Quantity<'ratio'>;
    readonly growth: Quantity<'strain'>;
    readonly source: Source;
}
export declare function dampWall(material: Material, climate: Climate): DampWall;
