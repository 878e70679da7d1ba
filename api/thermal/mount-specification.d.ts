import type { Given, Si } from '../formula/index.js';
export declare const MOUNT: {
    readonly body: {
        readonly fields: {
            readonly canDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly canLength: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly canEmissivity: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 1;
                readonly default: 0.6;
            };
            readonly ringInnerDiameter: {
                readonly kind: "length";
                readonly min: 0;
                readonly default: "0 mm";
            };
            readonly ringOuterDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly mass: {
                readonly kind: "mass";
                readonly above: 0;
            };
            readonly windingMass: {
                readonly kind: "mass";
                readonly above: 0;
            };
            readonly statorMass: {
                readonly kind: "mass";
                readonly above: 0;
            };
            readonly canMass: {
                readonly kind: "mass";
                readonly above: 0;
            };
            readonly windingToStator: {
                readonly kind: "thermalResistance";
                readonly above: 0;
            };
            readonly statorToCan: {
                readonly kind: "thermalResistance";
                readonly above: 0;
            };
            readonly statorToBase: {
                readonly kind: "thermalResistance";
                readonly min: 0;
                readonly default: "0 K/W";
            };
        };
    };
    readonly plate: {
        readonly fields: {
            readonly width: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly height: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly thickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly conductivity: {
                readonly kind: "thermalConductivity";
                readonly above: 0;
            };
            readonly density: {
                readonly kind: "density";
                readonly above: 0;
            };
            readonly specificHeat: {
                readonly kind: "specificHeat";
                readonly above: 0;
            };
            readonly emissivity: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 1;
                readonly default: 0.9;
            };
            readonly contact: {
                readonly kind: "heatTransferCoefficient";
                readonly above: 0;
                readonly default: "1500 W/(m^2 K)";
            };
            readonly attitude: {
                readonly oneOf: readonly ["vertical", "motorUp", "motorDown"];
                readonly default: "vertical";
            };
        };
    };
    readonly insert: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly thickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly conductivity: {
                readonly kind: "thermalConductivity";
                readonly above: 0;
                readonly default: "167 W/(m K)";
            };
            readonly density: {
                readonly kind: "density";
                readonly above: 0;
                readonly default: "2700 kg/m^3";
            };
            readonly specificHeat: {
                readonly kind: "specificHeat";
                readonly above: 0;
                readonly default: "896 J/(kg K)";
            };
            readonly contact: {
                readonly kind: "heatTransferCoefficient";
                readonly above: 0;
                readonly default: "1500 W/(m^2 K)";
            };
        };
        readonly optional: true;
    };
    readonly links: {
        readonly list: {
            readonly fields: {
                readonly length: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly perimeter: {
                    readonly kind: "length";
                    readonly above: 0;
                };
                readonly section: {
                    readonly kind: "area";
                    readonly above: 0;
                };
                readonly conductivity: {
                    readonly kind: "thermalConductivity";
                    readonly above: 0;
                };
                readonly emissivity: {
                    readonly kind: "ratio";
                    readonly min: 0;
                    readonly max: 1;
                    readonly default: 0.9;
                };
            };
        };
        readonly optional: true;
    };
    readonly sink: {
        readonly fields: {
            readonly on: {
                readonly oneOf: readonly ["mount", "stator"];
                readonly default: "mount";
            };
            readonly width: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly height: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly finLength: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly finThickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly fins: {
                readonly kind: "count";
                readonly min: 2;
                readonly whole: true;
            };
            readonly baseThickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly conductivity: {
                readonly kind: "thermalConductivity";
                readonly above: 0;
                readonly default: "167 W/(m K)";
            };
            readonly density: {
                readonly kind: "density";
                readonly above: 0;
                readonly default: "2700 kg/m^3";
            };
            readonly specificHeat: {
                readonly kind: "specificHeat";
                readonly above: 0;
                readonly default: "896 J/(kg K)";
            };
            readonly emissivity: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 1;
                readonly default: 0.8;
            };
            readonly joint: {
                readonly kind: "thermalResistance";
                readonly above: 0;
            };
        };
        readonly optional: true;
    };
    readonly controller: {
        readonly fields: {
            readonly area: {
                readonly kind: "area";
                readonly above: 0;
            };
            readonly height: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly emissivity: {
                readonly kind: "ratio";
                readonly min: 0;
                readonly max: 1;
                readonly default: 0.9;
            };
            readonly mass: {
                readonly kind: "mass";
                readonly above: 0;
            };
            readonly specificHeat: {
                readonly kind: "specificHeat";
                readonly above: 0;
                readonly default: "900 J/(kg K)";
            };
            readonly quiescent: {
                readonly kind: "power";
                readonly min: 0;
                readonly default: "0 W";
            };
            readonly switchResistance: {
                readonly kind: "electricalResistance";
                readonly min: 0;
            };
            readonly resistanceCoefficient: {
                readonly kind: "temperatureCoefficient";
                readonly min: 0;
                readonly default: "0.5 %/K";
            };
            readonly junctionToBoard: {
                readonly kind: "thermalResistance";
                readonly min: 0;
                readonly default: "0 K/W";
            };
            readonly supplyVoltage: {
                readonly kind: "voltage";
                readonly min: 0;
                readonly default: "0 V";
            };
            readonly switchingFrequency: {
                readonly kind: "frequency";
                readonly min: 0;
                readonly default: "0 Hz";
            };
            readonly edgeTime: {
                readonly kind: "time";
                readonly min: 0;
                readonly default: "0 s";
            };
            readonly toMount: {
                readonly kind: "thermalConductance";
                readonly above: 0;
            };
        };
        readonly optional: true;
    };
    readonly surroundings: {
        readonly fields: {
            readonly air: {
                readonly kind: "temperature";
                readonly min: "-60 degC";
                readonly max: "200 degC";
            };
            readonly radiant: {
                readonly kind: "temperature";
                readonly min: 0;
                readonly optional: true;
            };
            readonly altitude: {
                readonly kind: "length";
                readonly min: "-500 m";
                readonly max: "11 km";
                readonly default: "0 m";
            };
            readonly airSpeed: {
                readonly kind: "velocity";
                readonly min: 0;
                readonly default: "0 m/s";
            };
        };
    };
    readonly rotationCools: {
        readonly flag: true;
        readonly default: false;
    };
    readonly contactScatter: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly default: 0.6;
    };
    readonly conductivityScatter: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly default: 0.3;
    };
    readonly internalScatter: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly default: 0.3;
    };
};
export type MountSpecification = Given<typeof MOUNT>;
export type MountNumbers = Si<typeof MOUNT>;
