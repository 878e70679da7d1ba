import { type In, Quantity } from '../units/index.js';
export declare const polymerLimit: import("../formula/formula.js").Formula<{
    readonly glassTransition: "glassTransitionTemperature";
    readonly heatDeflection180: {
        readonly kind: "heatDeflectionTemperature180";
        readonly optional: true;
    };
    readonly heatDeflection045: {
        readonly kind: "heatDeflectionTemperature045";
        readonly optional: true;
    };
    readonly guard: {
        readonly kind: "temperatureDifference";
        readonly min: 0;
        readonly default: "15 K";
    };
}, {
    readonly temperature: "temperature";
    readonly governs: {
        readonly oneOf: readonly ["glassTransition", "heatDeflection180", "heatDeflection045"];
    };
}>;
export declare const temperatureMargin: import("../formula/formula.js").Formula<{
    readonly temperature: "temperature";
    readonly limit: "temperature";
    readonly ambient: "temperature";
    readonly guard: {
        readonly kind: "temperatureDifference";
        readonly min: 0;
        readonly default: "5 K";
    };
}, {
    readonly margin: "temperatureDifference";
    readonly utilisation: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["ok", "marginal", "fails"];
    };
}>;
export declare const insulationAgeing: import("../formula/formula.js").Formula<{
    readonly temperature: "temperature";
    readonly classTemperature: "temperature";
    readonly halvingStep: {
        readonly kind: "temperatureDifference";
        readonly above: 0;
        readonly default: "10 K";
    };
}, "ratio">;
export interface PartLimit {
    readonly part: string;
    readonly node: string;
    readonly limit?: In<'temperature'> | undefined;
    readonly guard?: In<'temperatureDifference'> | undefined;
}
export interface PartVerdict {
    readonly part: string;
    readonly node: string;
    readonly temperature: Quantity<'temperature'>;
    readonly limit: Quantity<'temperature'> | undefined;
    readonly margin: Quantity<'temperatureDifference'> | undefined;
    readonly utilisation: Quantity<'ratio'> | undefined;
    readonly state: 'ok' | 'marginal' | 'fails' | 'unknown';
}
export interface Verdict {
    readonly governing: PartVerdict | undefined;
    readonly parts: readonly PartVerdict[];
}
export declare function judge(temperatures: Readonly<Record<string, Quantity<'temperature'>>>, limits: readonly PartLimit[], ambient?: In<'temperature'>): Verdict;
